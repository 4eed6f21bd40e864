package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * What a climber asks of its support, grown and wet.
 *
 * @param weightClass none, light, medium, heavy or very-heavy
 * @param wetLowPsf lightest on the canopy plan
 * @param wetHighPsf heaviest on the canopy plan
 * @param wetDesignPsf what is designed for
 * @param hangingIn what hangs below the crossbeams
 * @param canopyFillLeafRatio share of the top that leaves close
 * @param canopyFillBareRatio share of the top that bare stems close
 * @param sideFillLeafRatio share of the sides that leaves close
 * @param sideFillBareRatio share of the sides that bare stems close
 * @param dragFactor force on leaves over wind pressure and covered area
 * @param matIn thickness of the mat of leaves and stems on the top
 * @param climbsBy twining, tendrils, leaf-stalks, rootlets, tied-in or nothing
 * @param leanInIn what it takes from the walk on each side
 * @param woody true when its frame stays through the winter
 * @param coldestZone coldest hardiness zone in which the usual garden kinds winter
 */
public record VineRow(
    String id,
    String weightClass,
    double wetLowPsf,
    double wetHighPsf,
    double wetDesignPsf,
    double hangingIn,
    double canopyFillLeafRatio,
    double canopyFillBareRatio,
    double sideFillLeafRatio,
    double sideFillBareRatio,
    double dragFactor,
    double matIn,
    String climbsBy,
    double leanInIn,
    boolean woody,
    int coldestZone,
    Source source,
    String note)
    implements TableRow {

  /** True where it winters in a hardiness zone; half zones have the winters of whole ones. */
  public boolean winters(double zone) {
    return coldestZone <= Math.floor(zone);
  }

  /** True where grown shoots or flowers hang down into the way. */
  public boolean hangs() {
    return hangingIn > 0;
  }

  static VineRow read(Row row) {
    VineRow vine =
        new VineRow(
            row.text("id"),
            row.oneOf("weight_class", "none", "light", "medium", "heavy", "very-heavy"),
            row.notNegative("wet_low_psf"),
            row.notNegative("wet_high_psf"),
            row.notNegative("wet_design_psf"),
            row.notNegative("hanging_in"),
            row.share("canopy_fill_leaf_ratio"),
            row.share("canopy_fill_bare_ratio"),
            row.share("side_fill_leaf_ratio"),
            row.share("side_fill_bare_ratio"),
            row.notNegative("drag_factor"),
            row.notNegative("mat_in"),
            row.oneOf(
                "climbs_by",
                "twining",
                "tendrils",
                "leaf-stalks",
                "rootlets",
                "tied-in",
                "nothing"),
            row.notNegative("lean_in_in"),
            row.yes("woody"),
            (int) row.positive("coldest_zone"),
            row.source(),
            row.optional("note"));
    if (vine.canopyFillBareRatio > vine.canopyFillLeafRatio) {
      throw row.refuse("canopy_fill_bare_ratio", RefusalWords.say("vines.bare"));
    }
    if (vine.sideFillBareRatio > vine.sideFillLeafRatio) {
      throw row.refuse("side_fill_bare_ratio", RefusalWords.say("vines.bare"));
    }
    if (vine.wetDesignPsf < vine.wetLowPsf || vine.wetDesignPsf > vine.wetHighPsf) {
      throw row.refuse("wet_design_psf", RefusalWords.say("vines.wet"));
    }
    return vine;
  }
}
