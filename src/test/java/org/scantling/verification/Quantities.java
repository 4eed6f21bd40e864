package org.scantling.verification;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.scantling.tables.Tables;

/** How each quantity of the pack is computed by the program: one way for each. */
final class Quantities {
  private final Map<String, ToDoubleFunction<PackRow>> all = new HashMap<>();

  Quantities(Tables tables) {
    TimberSpans spans = new TimberSpans(tables);
    for (Map<String, ToDoubleFunction<PackRow>> some :
        List.of(
            TimberMembers.QUANTITIES,
            TimberFasteners.QUANTITIES,
            new TimberStability(tables).quantities(),
            new HeaderSpans(tables).quantities(),
            spans.quantities(),
            LoadValues.QUANTITIES,
            GroundValues.QUANTITIES,
            FrameCases.QUANTITIES,
            new TableValues(tables).quantities())) {
      some.forEach(this::add);
    }
  }

  private void add(String quantity, ToDoubleFunction<PackRow> way) {
    if (all.putIfAbsent(quantity, way) != null) {
      throw new IllegalStateException("quantity " + quantity + " is computed in two ways");
    }
  }

  double compute(PackRow row) {
    ToDoubleFunction<PackRow> way = all.get(row.quantity());
    if (way == null) {
      throw new IllegalStateException(
          row + ": quantity " + row.quantity() + " must be one of " + new TreeSet<>(all.keySet()));
    }
    return way.applyAsDouble(row);
  }

  Set<String> names() {
    return all.keySet();
  }
}
