package org.scantling.loads;

/**
 * Snow that stays on an open top.
 *
 * <p>Crossbeams catch snow on their own breadth, vines catch more, and narrow gaps knit over.
 *
 * @param roof the snow of a closed roof here
 * @param top crossbeams and foliage
 * @param shareRatio the share of the roof snow that is counted, 0 to 1
 * @param branch which rule decided the share
 * @param snowPsf snow on the plan area of the top, psf
 */
public record OpenTopSnow(
    FlatRoofSnow roof, OpenTop top, double shareRatio, Branch branch, double snowPsf) {

  /** Which rule decided the share. */
  public enum Branch {
    /** Full snow was asked for. */
    FULL_ASKED_FOR,
    /** The gaps are narrow enough for snow to bridge: full snow. */
    GAPS_BRIDGED,
    /** The covered share is under the minimum share: the minimum. */
    MINIMUM_SHARE,
    /** The covered share itself. */
    COVERED_SHARE
  }

  public OpenTopSnow {
    Argument.share("snow share", shareRatio);
    Argument.zeroOrMore("snow (psf)", snowPsf);
  }

  /**
   * Finds the snow on an open top.
   *
   * @param roof flat-roof snow at this site
   * @param top crossbeams and foliage in the snow season
   * @param rule minimum share, bridging gap, full asked for or not
   * @return share, the branch that decided it, and the snow on plan area in psf
   *     <p>Source: ASCE 7, 2016, section 7.3 for the roof snow; the share is common practice
   *     <p>Worked number: 20 psf of roof snow, 1.5 in crossbeams at 16 in, no leaves, minimum share
   *     0.5, bridging gap 6 in: the covered share 0.094 is under the minimum, so 10 psf.
   */
  public static OpenTopSnow on(FlatRoofSnow roof, OpenTop top, SnowShareRule rule) {
    Branch branch = branch(top, rule);
    double shareRatio =
        switch (branch) {
          case FULL_ASKED_FOR, GAPS_BRIDGED -> 1;
          case MINIMUM_SHARE -> rule.minimumShareRatio();
          case COVERED_SHARE -> top.coveredRatio();
        };
    return new OpenTopSnow(roof, top, shareRatio, branch, shareRatio * roof.flatRoofSnowPsf());
  }

  private static Branch branch(OpenTop top, SnowShareRule rule) {
    if (rule.fullAskedFor()) {
      return Branch.FULL_ASKED_FOR;
    }
    if (top.gapIn() <= rule.bridgingGapIn()) {
      return Branch.GAPS_BRIDGED;
    }
    return top.coveredRatio() < rule.minimumShareRatio()
        ? Branch.MINIMUM_SHARE
        : Branch.COVERED_SHARE;
  }
}
