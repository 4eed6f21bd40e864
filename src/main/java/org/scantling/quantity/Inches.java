package org.scantling.quantity;

/** How many inches, square and cubic inches a foot holds, and what an inch is in millimetres. */
public final class Inches {
  public static final double PER_FOOT = 12;
  public static final double SQUARE_PER_SQUARE_FOOT = 144;
  public static final double CUBIC_PER_CUBIC_FOOT = 1728;

  /** Exact since 1959. */
  public static final double IN_MILLIMETRES = 25.4;

  private Inches() {}
}
