package org.scantling.engine;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.scantling.design.Site;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** An engine that counts its passes. */
public final class CountedEngine {
  private final Engine engine;
  private final AtomicInteger most = new AtomicInteger();

  public CountedEngine(RuleBase rules, Tables tables) {
    this.engine =
        new Engine(rules, tables, id -> true, passes -> most.accumulateAndGet(passes, Math::max));
  }

  public Proposal propose(Site site) {
    return engine.propose(site, List.of());
  }

  /** The most passes that any one number of bays has taken so far. */
  public int most() {
    return most.get();
  }
}
