package org.scantling.tables;

/**
 * What timber weighs when it is carried: fresh from the treating plant it holds more water than the
 * design values count with. Above fibre saturation wood no longer swells, so only the water is
 * more.
 */
public final class FreshWeight {
  private FreshWeight() {}

  /**
   * @param wetWeightPcf as the design values have it
   */
  public static double pcf(Tables tables, double wetWeightPcf) {
    double freshRatio = tables.shop("stock.fresh-moisture").amount();
    double listedRatio = tables.shop("stock.listed-moisture").amount();
    return wetWeightPcf * (1 + freshRatio) / (1 + listedRatio);
  }
}
