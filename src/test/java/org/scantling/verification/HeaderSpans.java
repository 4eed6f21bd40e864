package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.DesignValues;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Shear;
import org.scantling.timber.SizeFactors;

/**
 * Header spans of a code under a roof and a ceiling: plies that work together, as repetitive
 * members, with shear taken a depth from the support, in the weakest of the species that the print
 * lists. Southern pine is left out: the values of that edition's day were higher than today's.
 */
final class HeaderSpans {
  private static final List<String> SPECIES =
      List.of("douglas-fir-larch", "hem-fir", "spruce-pine-fir");
  private static final double DEAD_PSF = 20;
  private static final double SNOW_SHARE = 0.7;
  private static final double EAVES_FT = 2;
  private static final double LONGEST_IN = 600;

  private final Tables tables;

  HeaderSpans(Tables tables) {
    this.tables = tables;
  }

  Map<String, ToDoubleFunction<PackRow>> quantities() {
    return Map.ofEntries(entry("header span", this::weakestIn));
  }

  private double weakestIn(PackRow row) {
    return SPECIES.stream()
        .map(species -> longestIn(row, values(row, species)))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private double longestIn(PackRow row, AdjustedValues values) {
    double loadLbPerIn =
        (DEAD_PSF + SNOW_SHARE * row.number("groundSnowPsf"))
            * (row.number("buildingWidthFt") / 2 + EAVES_FT)
            / 12;
    double passesIn = 1;
    double failsIn = LONGEST_IN;
    while (failsIn - passesIn > 1e-6) {
      double middleIn = (passesIn + failsIn) / 2;
      if (passes(section(row), values, loadLbPerIn, middleIn)) {
        passesIn = middleIn;
      } else {
        failsIn = middleIn;
      }
    }
    return passesIn;
  }

  private static boolean passes(
      Rectangle section, AdjustedValues values, double loadLbPerIn, double spanIn) {
    double momentInLb = loadLbPerIn * spanIn * spanIn / 8;
    double shearLb = loadLbPerIn * Math.max(0, spanIn / 2 - section.depthIn());
    BeamStability heldByTheWall = BeamStability.of(section, 0, values);
    return Bending.of(momentInLb, section, values, heldByTheWall).check().passes()
        && Shear.of(shearLb, section, values.shear()).check().passes();
  }

  private Rectangle section(PackRow row) {
    SizeRow size = tables.size(row.text("size"));
    return new Rectangle(size.thicknessIn() * row.number("plies"), size.widthIn());
  }

  private AdjustedValues values(PackRow row, String species) {
    SizeRow size = tables.size(row.text("size"));
    DesignValueRow found = tables.designValues(species, "No.2", size);
    DesignValues reference =
        new DesignValues(
            found.bendingPsi(),
            found.tensionPsi(),
            found.shearPsi(),
            found.bearingPsi(),
            found.compressionPsi(),
            found.elasticityPsi(),
            found.stabilityElasticityPsi(),
            found.specificGravityRatio());
    double sizeFactor = tables.factors().size(species, size).bendingFactor();
    return AdjustedValues.of(
        reference,
        Adjustments.none()
            .lasting(tables.factors().loadDuration("snow").amount())
            .sized(new SizeFactors(sizeFactor, 1, 1))
            .repeated(tables.factor("repetitive.bending").amount()));
  }
}
