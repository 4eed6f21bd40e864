package org.scantling.judge;

import java.util.Map;

/**
 * A size as sold.
 *
 * @param id name in the sizes table
 * @param kind dimension, post-timber or beam-timber
 * @param thicknessIn dressed thickness
 * @param depthIn dressed depth
 * @param nominalThicknessIn nominal thickness
 * @param nominalDepthIn nominal depth
 */
record Stock(
    String id,
    String kind,
    double thicknessIn,
    double depthIn,
    double nominalThicknessIn,
    double nominalDepthIn) {
  static Stock of(String id) {
    Map<String, String> row = Tables.row("sizes", id);
    return new Stock(
        id,
        row.get("member_class"),
        Tables.number(row, "thickness_in"),
        Tables.number(row, "width_in"),
        Tables.number(row, "nominal_thickness_in"),
        Tables.number(row, "nominal_width_in"));
  }

  boolean dimension() {
    return kind.equals("dimension");
  }

  double areaIn2() {
    return thicknessIn * depthIn;
  }

  double sectionIn3() {
    return thicknessIn * depthIn * depthIn / 6;
  }

  double inertiaIn4() {
    return thicknessIn * Math.pow(depthIn, 3) / 12;
  }

  /** C_fu of Tables 4A and 4B; timbers have none. */
  double flatUse() {
    boolean thick = nominalThicknessIn >= 4;
    double wide = nominalDepthIn;
    if (!dimension() || wide < 4) {
      return 1;
    }
    return wide < 5
        ? thick ? 1 : 1.1
        : wide < 6 ? thick ? 1.05 : 1.1 : wide < 10 ? thick ? 1.05 : 1.15 : thick ? 1.1 : 1.2;
  }
}
