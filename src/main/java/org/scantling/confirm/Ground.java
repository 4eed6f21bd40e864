package org.scantling.confirm;

/** What the ground does to a post that it holds upright. */
interface Ground {
  /** Ground that holds the foot of a post as a vice does: what a table of posts is about. */
  Ground FIRM =
      new Ground() {
        @Override
        public double bendingRatio(SidePush push) {
          return 1;
        }

        @Override
        public double turnIn(SidePush push, double windFactor) {
          return 0;
        }
      };

  /** Most bending below the ground over that at the ground; 1 where nothing grows down there. */
  double bendingRatio(SidePush push);

  /** How far the top of the post moves because its foot turns, in. */
  double turnIn(SidePush push, double windFactor);
}
