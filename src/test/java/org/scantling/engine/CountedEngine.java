package org.scantling.engine;

import java.util.List;
import org.scantling.design.Site;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/**
 * An engine that counts its passes, by two rules: one that fires once in every pass, and one that
 * fires once for every number of bays given up, so that a new start is told from a further pass.
 */
public final class CountedEngine {
  private static final String ONCE_A_PASS = "loads.live.canopy";
  private static final String ONCE_A_DEAD_END = "layout.bays.dead-end";

  private final Engine engine;
  private int passes;
  private int deadEnds;
  private int deadEndsBefore;
  private int most;

  public CountedEngine(RuleBase rules, Tables tables) {
    this.engine = new Engine(rules, tables, this::seen);
  }

  public Proposal propose(Site site) {
    passes = 0;
    deadEnds = 0;
    deadEndsBefore = 0;
    Proposal proposal = engine.propose(site, List.of());
    passEnds();
    return proposal;
  }

  /** The most passes that any one number of bays has taken so far. */
  public int most() {
    return most;
  }

  private boolean seen(String rule) {
    if (rule.equals(ONCE_A_PASS)) {
      passEnds();
      passes++;
    } else if (rule.equals(ONCE_A_DEAD_END)) {
      deadEnds++;
    }
    return true;
  }

  private void passEnds() {
    if (deadEnds > deadEndsBefore) {
      passes = 1;
    }
    deadEndsBefore = deadEnds;
    deadEnds = 0;
    most = Math.max(most, passes);
  }
}
