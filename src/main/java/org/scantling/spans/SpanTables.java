package org.scantling.spans;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.scantling.confirm.Limits;
import org.scantling.confirm.Material;
import org.scantling.confirm.Materials;
import org.scantling.confirm.Service;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Tables;

/** Works span tables out. */
public final class SpanTables {
  /** What stops a size for which the standard has no such grade. */
  public static final String NO_VALUES = "design-values.csv";

  private final Tables tables;
  private final Materials materials;

  public SpanTables(Tables tables) {
    this.tables = tables;
    this.materials = new Materials(tables);
  }

  /** Every cell that was asked for. */
  public SpanTable of(SpanRequest request) {
    List<SpanRow> rows = new ArrayList<>();
    Set<Source> values = new LinkedHashSet<>();
    for (TimberGrade timber : request.timbers()) {
      for (TimberSize size : request.sizes()) {
        materials
            .row(size.row(), timber.species(), timber.grade())
            .ifPresent(row -> values.add(row.source()));
        for (Measure step : request.steps()) {
          rows.add(cell(request, timber, size, step));
        }
      }
    }
    return new SpanTable(request, rows, List.copyOf(values));
  }

  private SpanRow cell(SpanRequest request, TimberGrade timber, TimberSize size, Measure step) {
    Optional<SpanRow.Stop> barred = barred(request, timber, size);
    if (barred.isPresent()) {
      return new SpanRow(timber, size, step, Optional.empty(), barred.get());
    }
    Longest.Found found = search(request, material(request, timber, size), step);
    Unit unit = request.byHeight() ? Unit.SQUARE_FOOT : Unit.INCH;
    Optional<Measure> reach =
        found.amount().isPresent()
            ? Optional.of(new Measure(found.amount().getAsDouble(), unit))
            : Optional.empty();
    return new SpanRow(timber, size, step, reach, SpanRow.Stop.at(found.governs()));
  }

  private Longest.Found search(SpanRequest request, Material material, Measure step) {
    SpanLimits limits = new SpanLimits(tables, request.assumptions());
    DoubleFunction<List<Checked>> trial = trial(request, material, step, limits.limits());
    return new Longest(
            amount -> trial.apply(amount).stream().filter(limits::counts).toList(), limits::most)
        .search();
  }

  private DoubleFunction<List<Checked>> trial(
      SpanRequest request, Material material, Measure step, Limits limits) {
    Assumptions assumed = request.assumptions();
    if (request.role() != Role.POSTS) {
      return new BeamTrial(tables, request.role(), material, step.amount(), assumed, limits);
    }
    PostTrial post = new PostTrial(tables, material, assumed, limits);
    return request.byHeight()
        ? areaFt2 -> post.of(step.amount(), areaFt2)
        : heightIn -> post.of(heightIn, step.amount());
  }

  private Material material(SpanRequest request, TimberGrade timber, TimberSize size) {
    Assumptions assumed = request.assumptions();
    Assumptions.Use use = assumed.use();
    Service service = new Service(use.wet(), use.incised(), use.repetitiveFactor());
    Material material =
        materials
            .find(size.row(), size.plies(), timber.species(), timber.grade(), service)
            .orElseThrow();
    return assumed.loads().ownWeightAdded() ? material : material.weightless();
  }

  /** What no check is worked for: a grade that the size does not have, a notch too deep. */
  private Optional<SpanRow.Stop> barred(SpanRequest request, TimberGrade timber, TimberSize size) {
    if (materials.row(size.row(), timber.species(), timber.grade()).isEmpty()) {
      return Optional.of(SpanRow.Stop.without(NO_VALUES));
    }
    NumberRow share = tables.thumb(notchShare(request.assumptions().beam()));
    boolean deep = request.assumptions().beam().notchIn() > share.amount() * size.row().widthIn();
    return deep && request.role() != Role.POSTS
        ? Optional.of(SpanRow.Stop.by(share))
        : Optional.empty();
  }

  private static String notchShare(Assumptions.Beam beam) {
    return beam.spanCount() > 1 ? "notch.interior-depth-share" : "notch.end-depth-share";
  }
}
