package org.scantling.confirm;

import org.scantling.timber.Rectangle;

/**
 * Two boards bolted to both faces of a post.
 *
 * @param post the post
 * @param header the boards, one section and two plies
 * @param toEndIn from the crossing to the nearest end of the boards
 * @param stretchRatio length along the boards over length in plan; over 1 where they slope
 */
public record JointCrossing(Material post, Material header, double toEndIn, double stretchRatio) {
  /** Of level boards. */
  public JointCrossing(Material post, Material header, double toEndIn) {
    this(post, header, toEndIn, 1);
  }

  Rectangle board() {
    return header.section();
  }

  double postIn() {
    return post.section().breadthIn();
  }
}
