package org.scantling.drawing;

import org.scantling.quantity.Inches;
import org.scantling.sayings.Sayings;

/**
 * The bar under a drawing by which its scale is read.
 *
 * @param parts light and dark by turns
 * @param partIn length of each in the structure
 * @param words what it is long over all
 */
record ScaleBar(int parts, double partIn, String words) {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final int FEET = 5;
  private static final int HALF_METERS = 4;
  private static final double HALF_METER_MM = 500;
  private static final int INCHES = 6;
  private static final int SHORT_PARTS = 3;
  private static final double SHORT_MM = 50;

  /** From that scale on feet would be too long. */
  private static final double NEAR_PX_PER_IN = 4;

  static ScaleBar of(double scalePxPerIn, boolean metric) {
    boolean near = scalePxPerIn >= NEAR_PX_PER_IN;
    String words =
        SAYINGS.say((near ? "short-bar." : "scale-bar.") + (metric ? "metric" : "imperial"));
    if (metric) {
      double partMm = near ? SHORT_MM : HALF_METER_MM;
      return new ScaleBar(near ? SHORT_PARTS : HALF_METERS, partMm / Inches.IN_MILLIMETRES, words);
    }
    return near ? new ScaleBar(INCHES, 1, words) : new ScaleBar(FEET, Inches.PER_FOOT, words);
  }
}
