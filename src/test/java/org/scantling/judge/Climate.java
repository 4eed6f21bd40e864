package org.scantling.judge;

import java.util.Map;

/**
 * Loads of the place on this structure: ASCE 7-16 26.10, 7.3, 27.3.2, with the numbers that the
 * standard does not give from the program's rows.
 */
final class Climate {
  private final Design design;
  private final Asked asked;

  Climate(Design design, Asked asked) {
    this.design = design;
    this.asked = asked;
  }

  /** qz at the top, psf, strength level. */
  double pressurePsf() {
    Map<String, String> place = Tables.row("exposure", design.criterionText("exposure"));
    double heightFt = Math.max(15, design.crossbeamTopIn() / 12);
    double kz =
        2.01
            * Math.pow(
                heightFt / Tables.number(place, "gradient_height_ft"),
                2 / Tables.number(place, "alpha_exponent"));
    return 0.00256 * kz * 0.85 * Math.pow(design.criterion("windSpeedMph"), 2);
  }

  double vine(String column) {
    return Tables.number(Tables.row("vines", design.criterionText("vine")), column);
  }

  private double solidShare() {
    return design.crossbeamBreadthIn() / design.layout("crossbeamSpacingIn");
  }

  double coveredShare() {
    return solidShare() + (1 - solidShare()) * vine("canopy_fill_leaf_ratio");
  }

  /** Wind that presses the top: free roof, clear below. */
  double pressPsf() {
    return pressurePsf() * 0.85 * 1.2 * coveredShare();
  }

  /** Wind that lifts it; where leaves close the sides, the way below counts as blocked. */
  double liftPsf() {
    double blocked = Tables.value("wind", "wind.free-roof.obstructed-from");
    double cn = vine("side_fill_leaf_ratio") >= blocked ? 1.2 : 1.1;
    return pressurePsf() * 0.85 * cn * coveredShare();
  }

  /** 7.3 on the covered share; where snow bridges the gaps, the least of 7.3.4 for a flat roof. */
  double snowPsf() {
    double exposed = design.criterionText("exposure").equals("D") ? 0.9 : 1;
    double ground = design.criterion("groundSnowPsf");
    double importance = asked.gathered() ? 1 : 0.8;
    double flat = 0.7 * exposed * 1.2 * importance * ground;
    double thick = design.need("crossbeam").stock().thicknessIn();
    boolean pairsMeet = design.baysIn().stream().anyMatch(bay -> design.spaces(bay) == 1);
    double beside = (design.pliesAtPosts() - 1) * thick * (pairsMeet ? 1 : 0.5);
    double gap = design.closestIn() - thick - beside;
    double bare = solidShare() + (1 - solidShare()) * vine("canopy_fill_bare_ratio");
    double share = asked.fullSnow() || gap <= 6 ? 1 : Math.min(1, Math.max(0.5, bare));
    double least = share < 1 ? 0 : importance * Math.min(ground, 20);
    return Math.max(share * flat, least);
  }

  /** What lies on an inch of crossbeam. */
  Top onCrossbeam() {
    double width = design.layout("crossbeamSpacingIn") / 144;
    return new Top(
        design.need("crossbeam").ownLbPerIn(),
        vine("wet_design_psf") * width,
        design.criterion("livePsf") * width,
        snowPsf() * width,
        pressPsf() * width,
        liftPsf() * width);
  }
}
