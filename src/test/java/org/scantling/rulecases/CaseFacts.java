package org.scantling.rulecases;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.tables.Tables;

/** The facts of all cases of a phase together, for tests that want many facts at once. */
public final class CaseFacts {
  private CaseFacts() {}

  /** Every fact that some case of the phase states, each once. */
  public static List<Fact> of(Phase phase) {
    TableCells cells = new TableCells(Tables.load());
    Set<Fact> facts = new LinkedHashSet<>();
    for (RuleCase one : CaseFile.all(cells)) {
      if (one.rules().phase() == phase) {
        facts.addAll(one.facts(cells, number -> number));
      }
    }
    return List.copyOf(facts);
  }
}
