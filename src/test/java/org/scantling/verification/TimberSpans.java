package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Factors;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
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

/**
 * Span tables of the codes and of the wood council's deck guide, from the program's own design
 * values, factors and sizes: a wrong Fb, E, C_F, C_M, C_i or dressed size moves a span by more than
 * the half inch that is allowed. Editions that used other values than today's give them in the row.
 */
final class TimberSpans {
  private static final double LONGEST_IN = 600;
  private static final int HALVINGS = 60;

  private final Tables tables;

  TimberSpans(Tables tables) {
    this.tables = tables;
  }

  Map<String, ToDoubleFunction<PackRow>> quantities() {
    return Map.ofEntries(
        entry("span", row -> spanIn(row, today(row), todaysSize(row).bendingFactor())),
        entry("span with older values", row -> spanIn(row, older(row), row.number("sizeFactor"))),
        entry("joist overhang", this::overhangIn));
  }

  /** The longest simple span that passes bending under all the load, and sag under the live. */
  private double spanIn(PackRow row, DesignValues reference, double sizeFactor) {
    AdjustedValues values = adjusted(row, reference, sizeFactor);
    double longest = longestIn(spanIn -> passes(row, values, spanIn));
    return Math.min(longest, row.number("capIn", LONGEST_IN));
  }

  private boolean passes(PackRow row, AdjustedValues values, double spanIn) {
    Rectangle section = section(row);
    double liveLbPerIn = row.number("livePsf") * row.number("spacingIn") / 144;
    double deadLbPerIn = row.number("deadPsf") * row.number("spacingIn") / 144;
    double momentInLb = (liveLbPerIn + deadLbPerIn) * spanIn * spanIn / 8;
    BeamStability heldByDecking = BeamStability.of(section, 0, values);
    double stiffness = values.elasticity().psi() * section.secondMomentIn4();
    double sagIn = 5 * liveLbPerIn * Math.pow(spanIn, 4) / (384 * stiffness);
    return Bending.of(momentInLb, section, values, heldByDecking).check().passes()
        && new Deflection(0, sagIn, 1).check(spanIn, row.number("liveDeflectionDivisor")).passes();
  }

  /** The longest tail beyond the beam that a load at its tip does not bend too far. */
  private double overhangIn(PackRow row) {
    DesignValues reference = today(row);
    double sizeFactor = todaysSize(row).bendingFactor();
    double spanIn = spanIn(row, reference, sizeFactor);
    double stiffness =
        adjusted(row, reference, sizeFactor).elasticity().psi() * section(row).secondMomentIn4();
    double tailIn = longestIn(tail -> tipHolds(row, spanIn, tail, stiffness));
    return Math.min(tailIn - row.number("beamIn"), row.number("mostShareOfSpan") * spanIn);
  }

  private static boolean tipHolds(PackRow row, double spanIn, double tailIn, double stiffness) {
    double lengthIn = spanIn + tailIn;
    double tipLbIn3 =
        ContinuousBeam.of(lengthIn, 0, spanIn)
            .solve(new BeamLoad.Point(lengthIn, row.number("tipLb")))
            .rightTipDeflectionLbIn3();
    return tipLbIn3 / stiffness <= tailIn / row.number("tipDeflectionDivisor");
  }

  private static double longestIn(DoublePredicate passes) {
    double passesIn = 1;
    double failsIn = LONGEST_IN;
    for (int i = 0; i < HALVINGS; i++) {
      double middleIn = (passesIn + failsIn) / 2;
      if (passes.test(middleIn)) {
        passesIn = middleIn;
      } else {
        failsIn = middleIn;
      }
    }
    return passesIn;
  }

  private Rectangle section(PackRow row) {
    SizeRow size = tables.size(row.text("size"));
    return new Rectangle(size.thicknessIn(), size.widthIn());
  }

  private Factors.Size todaysSize(PackRow row) {
    return tables.factors().size(row.text("species"), tables.size(row.text("size")));
  }

  private DesignValues today(PackRow row) {
    DesignValueRow found =
        tables.designValues(row.text("species"), row.text("grade"), tables.size(row.text("size")));
    return values(found.bendingPsi(), found.elasticityPsi());
  }

  private static DesignValues older(PackRow row) {
    return values(row.number("bendingPsi"), row.number("elasticityPsi"));
  }

  /** Bending and stiffness are all a span table asks for. */
  private static DesignValues values(double bendingPsi, double elasticityPsi) {
    return new DesignValues(bendingPsi, 500, 150, 500, 1000, elasticityPsi, elasticityPsi / 3, 0.5);
  }

  private AdjustedValues adjusted(PackRow row, DesignValues reference, double sizeFactor) {
    return AdjustedValues.of(
        reference,
        Adjustments.none()
            .lasting(row.number("durationFactor"))
            .sized(new SizeFactors(sizeFactor, 1, 1))
            .repeated(tables.factor("repetitive.bending").amount())
            .wet(row.yes("wet") ? wetService(row) : WetService.dry())
            .incised(row.yes("incised") ? incising(row) : PropertyFactors.none()));
  }

  private WetService wetService(PackRow row) {
    Factors.WetService wet =
        tables
            .factors()
            .wetService(row.text("species"), tables.size(row.text("size")).memberClass());
    return new WetService(
        new PropertyFactors(
            wet.bendingFactor(),
            wet.tensionFactor(),
            wet.shearFactor(),
            wet.bearingFactor(),
            wet.compressionFactor(),
            wet.elasticityFactor()),
        wet.bendingUnityUpToPsi(),
        wet.compressionUnityUpToPsi());
  }

  private PropertyFactors incising(PackRow row) {
    Factors.Incising cuts = tables.factors().incising(tables.size(row.text("size")).memberClass());
    double strength = cuts.strengthFactor();
    return new PropertyFactors(
        strength, strength, strength, cuts.bearingFactor(), strength, cuts.elasticityFactor());
  }
}
