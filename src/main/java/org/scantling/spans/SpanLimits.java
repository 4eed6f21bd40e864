package org.scantling.spans;

import java.util.Set;
import java.util.TreeSet;
import org.scantling.confirm.Limits;
import org.scantling.loads.DurationFactors;
import org.scantling.reasons.Checked;
import org.scantling.tables.Tables;

/** The limits of the checks under stated assumptions, and which checks count at all. */
final class SpanLimits {
  private final Tables tables;
  private final Assumptions assumed;
  private final Set<String> leftOut = new TreeSet<>();

  SpanLimits(Tables tables, Assumptions assumed) {
    this.tables = tables;
    this.assumed = assumed;
    if (assumed.sag().liveDivisor().isEmpty()) {
      leftOut.add("deflection-live");
    }
    if (assumed.sag().totalDivisor().isEmpty()) {
      leftOut.add("deflection-total");
    }
  }

  Limits limits() {
    return new Limits(
        new DurationFactors(
            tables.factors().loadDuration("dead").amount(),
            tables.factors().loadDuration("snow").amount(),
            assumed.loads().durationFactor(),
            tables.factors().loadDuration("wind").amount()),
        assumed.sag().creepFactor(),
        assumed.sag().totalDivisor().orElse(1),
        assumed.sag().liveDivisor().orElse(1),
        tables.factor(effectiveLength()).amount(),
        tables.factor("column.shape.sawn").amount(),
        tables.thumb("drift.height-share").amount(),
        assumed.post().eccentricityRatio(),
        tables.thumb("header.pair-share").amount());
  }

  boolean counts(Checked checked) {
    return !leftOut.contains(checked.id().substring(checked.id().indexOf('.') + 1));
  }

  double most(Checked checked) {
    return tables.check(checked.id()).limitRatio();
  }

  private String effectiveLength() {
    return assumed.post().topHeld() ? "effective-length.pinned-both" : "effective-length.flagpole";
  }
}
