package org.scantling.print;

import org.scantling.quantity.UnitSystem;

/**
 * How a text is to look.
 *
 * @param units feet and inches, or metric
 * @param colour whether headings may be set in bold by terminal codes
 * @param width columns, 40 or more
 */
public record PrintOptions(UnitSystem units, boolean colour, int width) {
  private static final int LEAST_WIDTH = 40;
  private static final int USUAL_WIDTH = 80;

  public PrintOptions {
    if (width < LEAST_WIDTH) {
      throw new IllegalArgumentException("width " + width + " must be " + LEAST_WIDTH + " or more");
    }
  }

  /** Plain text of 80 columns. */
  public static PrintOptions plain(UnitSystem units) {
    return new PrintOptions(units, false, USUAL_WIDTH);
  }
}
