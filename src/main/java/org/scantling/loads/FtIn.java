package org.scantling.loads;

/** The code's pressures are per square foot, the program measures in inches. */
final class FtIn {
  static final double SQ_IN_PER_SQ_FT = 144;
  static final double CU_IN_PER_CU_FT = 1728;

  private FtIn() {}
}
