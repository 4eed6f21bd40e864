package org.scantling.confirm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/** Keeps, of every check, the combination that worked it hardest. */
final class WorstChecks {
  private final String role;
  private final Function<String, Source> sources;
  private final Limits limits;
  private final Map<String, Checked> worst = new LinkedHashMap<>();

  WorstChecks(String role, Limits limits, Function<String, Source> sources) {
    this.role = role;
    this.limits = limits;
    this.sources = sources;
  }

  /** A check in pounds-force or psi, whose capacity depends on how long the load lasts. */
  void add(String name, LoadCombination combination, Check check, Unit unit) {
    add(name, combination, limits.duration().of(combination), check, unit);
  }

  /** A check in which load duration plays no part. */
  void addLasting(String name, LoadCombination combination, Check check, Unit unit) {
    add(name, combination, 1, check, unit);
  }

  private void add(
      String name, LoadCombination combination, double duration, Check check, Unit unit) {
    Checked before = worst.get(name);
    if (before == null || check.ratio() > before.check().ratio()) {
      String id = role + "." + name;
      worst.put(
          name, new Checked(id, role, combination.id(), duration, check, unit, sources.apply(id)));
    }
  }

  List<Checked> list() {
    return new ArrayList<>(worst.values());
  }
}
