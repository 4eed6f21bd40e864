package org.scantling.judge;

/**
 * Wind on one post as forces at heights, strength level.
 *
 * @param topLb what hangs on the head of the post
 * @param topAtIn its height
 * @param spreadLb what lies evenly on the height of the post
 * @param heightIn height of the post
 */
record Push(double topLb, double topAtIn, double spreadLb, double heightIn) {
  double totalLb() {
    return topLb + spreadLb;
  }

  double momentInLb() {
    return topLb * topAtIn + spreadLb * heightIn / 2;
  }

  double momentInLb(double heightUpIn) {
    double over = Math.max(0, heightIn - heightUpIn);
    return topLb * Math.max(0, topAtIn - heightUpIn) + spreadLb / heightIn * over * over / 2;
  }

  /** Sag of the head of a post held fast at the ground, times EI. */
  double headSag() {
    double h = heightIn;
    double lever = topAtIn - h;
    return topLb * h * h * h / 3 + topLb * lever * h * h / 2 + spreadLb * h * h * h / 8;
  }
}
