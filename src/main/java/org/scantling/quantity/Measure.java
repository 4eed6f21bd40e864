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

  public static Measure psi(double amount) {
    return new Measure(amount, Unit.PSI);
  }

  public static Measure pounds(double amount) {
    return new Measure(amount, Unit.POUND);
  }

  public static Measure inchPounds(double amount) {
    return new Measure(amount, Unit.INCH_POUND);
  }

  public static Measure psf(double amount) {
    return new Measure(amount, Unit.PSF);
  }

  /** A load that its own code prints in kilopascals. */
  public static Measure psfFromKpa(double amountPsf) {
    return new Measure(amountPsf, Unit.PSF_FROM_KPA);
  }

  public static Measure ratio(double amount) {
    return new Measure(amount, Unit.RATIO);
  }

  public static Measure count(double amount) {
    return new Measure(amount, Unit.COUNT);
  }
}
