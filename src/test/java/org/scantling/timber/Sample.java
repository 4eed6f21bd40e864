package org.scantling.timber;

/** Round values for the tests of this package. */
final class Sample {
  /** Near Douglas fir-larch No.2 (NDS Supplement 2018 Table 4A, from memory). */
  static final DesignValues FIR = new DesignValues(900, 575, 180, 625, 1350, 1.6e6, 580_000, 0.5);

  /** NDS Supplement 2018 Table 4A, C_M (Fc, Fc_perp, E and thresholds from memory). */
  static final WetService WET =
      new WetService(new PropertyFactors(0.85, 1, 0.97, 0.67, 0.8, 0.9), 1150, 750);

  /** NDS 2018 Table 4.3.8. */
  static final PropertyFactors INCISED = new PropertyFactors(0.8, 0.8, 0.8, 1, 0.8, 0.95);

  static final Rectangle TWO_BY_SIX = new Rectangle(1.5, 5.5);
  static final Rectangle FOUR_BY_FOUR = new Rectangle(3.5, 3.5);

  private Sample() {}

  /** Values without any factor. */
  static AdjustedValues plain(DesignValues reference) {
    return AdjustedValues.of(reference, Adjustments.none());
  }

  static AdjustedValues plain() {
    return plain(FIR);
  }

  /** A piece of that Fc and E min, all else as the sample. */
  static AdjustedValues column(double compressionPsi, double elasticityMinimumPsi) {
    return plain(
        new DesignValues(900, 575, 180, 625, compressionPsi, 1.6e6, elasticityMinimumPsi, 0.5));
  }

  static AdjustedStress stress(double psi) {
    return new AdjustedStress("F", psi, java.util.List.of());
  }
}
