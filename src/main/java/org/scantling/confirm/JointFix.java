package org.scantling.confirm;

import org.scantling.timber.Dowel;

/**
 * What holds a joint together, as a row of the joints table says it.
 *
 * @param way how it works
 * @param count fasteners at one joint
 * @param dowel the fastener; its lengths are in {@code reach}
 * @param reach how it goes into the wood
 * @param rated what the maker of a steel part vouches for, all parts of one joint together
 */
public record JointFix(Way way, int count, Dowel dowel, Reach reach, Rated rated) {

  /** How a joint works. */
  public enum Way {
    /** Bolts right through, loaded sideways. */
    BOLTED,
    /** Lag screws from above into the end grain of the post. */
    LAGGED,
    /** Nails driven on the slant. */
    TOE_NAILED,
    /** Wood screws driven on the slant. */
    TOE_SCREWED,
    /** Steel parts that the maker has tested. */
    RATED,
    /** One timber let into the other. */
    HOUSED
  }

  /**
   * How a fastener goes into the wood.
   *
   * @param lengthIn of the fastener
   * @param threadIn of it that grips, its tip left out
   * @param tipIn the tapered end
   */
  public record Reach(double lengthIn, double threadIn, double tipIn) {}

  /**
   * Allowable forces in wind, in pounds; 0 for what is not rated.
   *
   * @param downLb what hangs in it or stands on it, at normal load duration
   * @param momentInLb what bends it over
   */
  public record Rated(double liftLb, double sideLb, double downLb, double momentInLb) {
    /** Of parts in which nothing hangs. */
    public Rated(double liftLb, double sideLb) {
      this(liftLb, sideLb, 0);
    }

    /** Of parts that nothing bends over. */
    public Rated(double liftLb, double sideLb, double downLb) {
      this(liftLb, sideLb, downLb, 0);
    }
  }
}
