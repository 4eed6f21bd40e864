package org.scantling.engine;

import java.util.List;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** The same engine with nothing kept, with what one run keeps, and with what many runs share. */
public final class CachingEngines {
  private final Engine engine;
  private final ResultCache shared = new ResultCache(ResultCache.Retention.MANY_RUNS);
  private final ResultCache searched = new ResultCache(ResultCache.Retention.MANY_RUNS);

  public CachingEngines(RuleBase rules, Tables tables) {
    this.engine = new Engine(rules, tables);
  }

  /** Everything is worked out anew, in every pass. */
  public Proposal anew(Site site) {
    return engine.propose(site, List.of(), new ResultCache(ResultCache.Retention.NOTHING));
  }

  public Proposal oneRun(Site site) {
    return engine.propose(site, List.of());
  }

  /** What a search is answered, which has no reader, with what all its earlier sites have left. */
  public Proposal answers(Site site) {
    return engine.answer(site, List.of(), searched);
  }

  /** With what all earlier sites have left. */
  public Proposal manyRuns(Site site) {
    return engine.propose(site, List.of(), shared);
  }
}
