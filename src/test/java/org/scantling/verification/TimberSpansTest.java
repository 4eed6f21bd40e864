package org.scantling.verification;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.Deflection;
import org.scantling.timber.DesignValues;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.SizeFactors;
import org.scantling.timber.WetService;

/** Span tables of the codes and of the wood council's deck guide, to the inch they print. */
class TimberSpansTest {
  /** NDS Supplement 2018 Tables 4A and 4B (E, Fc and both thresholds from memory). */
  private static final WetService WET =
      new WetService(new PropertyFactors(0.85, 1, 0.97, 0.67, 0.8, 0.9), 1150, 750);

  /** NDS 2018 Table 4.3.8. */
  private static final PropertyFactors INCISED = new PropertyFactors(0.8, 0.8, 0.8, 1, 0.8, 0.95);

  private static final double LONGEST_IN = 600;
  private static final int HALVINGS = 60;

  static List<TimberRow> rows() {
    return TimberRow.read("timber-spans.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void the_longest_span_that_passes_is_the_printed_one(TimberRow row) {
    double passesIn = 1;
    double failsIn = LONGEST_IN;
    for (int i = 0; i < HALVINGS; i++) {
      double middleIn = (passesIn + failsIn) / 2;
      if (passes(row, middleIn)) {
        passesIn = middleIn;
      } else {
        failsIn = middleIn;
      }
    }
    row.assertReproducedBy(passesIn);
  }

  private static boolean passes(TimberRow row, double spanIn) {
    Rectangle section = new Rectangle(row.number("breadthIn"), row.number("depthIn"));
    AdjustedValues values = values(row);
    double liveLbPerIn = row.number("livePsf") * row.number("spacingIn") / 144;
    double deadLbPerIn = row.number("deadPsf") * row.number("spacingIn") / 144;
    double momentInLb = (liveLbPerIn + deadLbPerIn) * spanIn * spanIn / 8;
    BeamStability heldByDecking = BeamStability.of(section, 0, values);
    double stiffness = values.elasticity().psi() * section.secondMomentIn4();
    double sagIn = 5 * liveLbPerIn * Math.pow(spanIn, 4) / (384 * stiffness);
    return Bending.of(momentInLb, section, values, heldByDecking).check().passes()
        && new Deflection(0, sagIn, 1).check(spanIn, row.number("liveDeflectionDivisor")).passes();
  }

  private static AdjustedValues values(TimberRow row) {
    double elasticity = row.number("elasticityPsi");
    DesignValues reference =
        new DesignValues(
            row.number("bendingPsi"), 500, 150, 500, 1000, elasticity, elasticity / 3, 0.5);
    return AdjustedValues.of(
        reference,
        Adjustments.none()
            .lasting(row.number("loadDurationFactor"))
            .sized(new SizeFactors(row.number("sizeFactor"), 1, 1))
            .repeated(row.number("repetitiveFactor"))
            .wet(row.yes("wet") ? WET : WetService.dry())
            .incised(row.yes("incised") ? INCISED : PropertyFactors.none()));
  }
}
