package org.scantling.facts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** The rows that any rule may read without asking, sorted out by phase when one is first run. */
public final class CommonRows {
  private final RuleBase rules;
  private final Tables tables;
  private final Map<Phase, List<Fact>> byPhase = new EnumMap<>(Phase.class);

  public CommonRows(RuleBase rules, Tables tables) {
    this.rules = rules;
    this.tables = tables;
  }

  /** Those that some rule of the phase can match. */
  public List<Fact> of(Phase phase) {
    synchronized (byPhase) {
      return byPhase.computeIfAbsent(phase, this::read);
    }
  }

  private List<Fact> read(Phase phase) {
    List<Fact> rows = new ArrayList<>(tables.defaults().rows());
    rows.addAll(tables.thumbs().rows());
    return rules.read(phase, rows);
  }
}
