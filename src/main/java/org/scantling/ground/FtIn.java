package org.scantling.ground;

/** The code's formulas think in feet, the program in inches. */
final class FtIn {
  static final double IN_PER_FT = 12;
  static final double SQ_IN_PER_SQ_FT = 144;
  static final double CU_IN_PER_CU_FT = 1728;

  private FtIn() {}
}
