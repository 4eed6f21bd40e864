package org.scantling.quantity;

/**
 * A number with its unit, as reasons carry it.
 *
 * @param amount the number, finite
 * @param unit its unit
 */
public record Measure(double amount, Unit unit) {
  public Measure {
    if (!Double.isFinite(amount)) {
      throw new IllegalArgumentException("amount " + amount + " must be finite");
    }
  }

  public static Measure inches(double amount) {
    return new Measure(amount, Unit.INCH);
  }

  public static Measure psf(double amount) {
    return new Measure(amount, Unit.PSF);
  }

  public static Measure ratio(double amount) {
    return new Measure(amount, Unit.RATIO);
  }

  public static Measure count(double amount) {
    return new Measure(amount, Unit.COUNT);
  }
}
