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
final class CheckEnvelope {
  private final String role;
  private final Function<String, Source> sources;
  private final Limits limits;
  private final Map<String, Worked> worst = new LinkedHashMap<>();

  CheckEnvelope(String role, Limits limits, Function<String, Source> sources) {
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
    Worked before = worst.get(name);
    if (before == null || check.ratio() > before.check().ratio()) {
      worst.put(name, new Worked(combination, duration, check, unit));
    }
  }

  List<Checked> list() {
    List<Checked> list = new ArrayList<>(worst.size());
    worst.forEach((name, each) -> list.add(checked(role + "." + name, each)));
    return list;
  }

  private Checked checked(String id, Worked each) {
    return new Checked(
        id,
        role,
        each.combination().id(),
        each.durationRatio(),
        each.check(),
        each.unit(),
        sources.apply(id));
  }

  /** One check under one combination; named and given its source only once it is the worst. */
  private record Worked(
      LoadCombination combination, double durationRatio, Check check, Unit unit) {}
}
