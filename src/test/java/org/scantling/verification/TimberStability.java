package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Tables;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.DesignValues;
import org.scantling.timber.Rectangle;

/** Beams that may roll over sideways: the table of effective lengths and a published example. */
final class TimberStability {
  private final Tables tables;

  TimberStability(Tables tables) {
    this.tables = tables;
  }

  Map<String, ToDoubleFunction<PackRow>> quantities() {
    return Map.ofEntries(
        entry("effective length of a loading", TimberStability::effectiveLengthIn),
        entry("beam slenderness", row -> stability(row).slendernessRatio()),
        entry("beam buckling value", row -> stability(row).criticalStressPsi()),
        entry("bending value with stability", this::bendingPsi),
        entry("section modulus", row -> section(row).sectionModulusIn3()),
        entry("second moment", row -> section(row).secondMomentIn4()));
  }

  private static double effectiveLengthIn(PackRow row) {
    return BeamLoading.valueOf(row.text("loading"))
        .effectiveLengthIn(row.number("unbracedIn"), row.number("depthIn"));
  }

  private BeamStability stability(PackRow row) {
    return BeamStability.of(section(row), effectiveLengthIn(row), values(row));
  }

  private double bendingPsi(PackRow row) {
    return Bending.of(1, section(row), values(row), stability(row)).allowable().psi();
  }

  private static Rectangle section(PackRow row) {
    return new Rectangle(row.number("breadthIn"), row.number("depthIn"));
  }

  /** Of a 4x10 in the tables: the same row serves the deeper beam, with its size factor of 1. */
  private AdjustedValues values(PackRow row) {
    DesignValueRow found =
        tables.designValues(row.text("species"), row.text("grade"), tables.size("4x10"));
    return AdjustedValues.of(
        new DesignValues(
            found.bendingPsi(),
            found.tensionPsi(),
            found.shearPsi(),
            found.bearingPsi(),
            found.compressionPsi(),
            found.elasticityPsi(),
            found.stabilityElasticityPsi(),
            found.specificGravityRatio()),
        Adjustments.none());
  }
}
