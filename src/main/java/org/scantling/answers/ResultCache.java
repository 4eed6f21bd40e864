package org.scantling.answers;

import java.util.List;
import java.util.function.Supplier;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.SolvedBeams;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.rulebase.Fired;

/**
 * What was worked out already, so that the same is not worked out twice.
 *
 * <p>The tables and the rules stay as they are for as long as a cache lives, and no key names them;
 * whatever else a result depends on is in its key, by value. Not safe to share between threads.
 */
public final class ResultCache {
  private static final int MOST_CHECKS = 2_000;
  private static final int MOST_FINDINGS = 1_000;
  private static final int MOST_WALKS = 2;

  private final Retention retention;
  private final LruCache<List<Object>, List<Checked>> checks = new LruCache<>(MOST_CHECKS);
  private final LruCache<Asked, List<Fired>> findings = new LruCache<>(MOST_FINDINGS);
  private final LruCache<List<Object>, BracedWalk> walks = new LruCache<>(MOST_WALKS);
  private final SolvedBeams beams = new SolvedBeams();

  /** How much is kept. */
  public enum Retention {
    /** Nothing at all: everything is worked out anew. For tests that compare. */
    NOTHING,

    /**
     * What several checks of one run share, and what frames are solved for. A run seldom asks for
     * other checks and findings again, since a phase for which nothing changed is not worked again.
     */
    ONE_RUN,

    /** Checks and findings too: runs for sites that differ in one demand ask the same often. */
    MANY_RUNS
  }

  private record Asked(Phase phase, List<Fact> facts) {}

  public ResultCache(Retention retention) {
    this.retention = retention;
  }

  /** True where one run finds what another has worked out. */
  public boolean shared() {
    return retention == Retention.MANY_RUNS;
  }

  /** An empty cache of the same kind, for another thread. */
  public ResultCache another() {
    return new ResultCache(retention);
  }

  /**
   * True where a phase for which nothing changed since the pass before need not be worked again.
   */
  public boolean keepsPhases() {
    return retention != Retention.NOTHING;
  }

  /** The checks of one candidate, by all that they were given. */
  public List<Checked> checks(List<Object> given, Supplier<List<Checked>> work) {
    return retention == Retention.MANY_RUNS ? checks.of(given, work) : work.get();
  }

  /**
   * The checks of one candidate for which frames are solved: worth keeping within one run too,
   * which asks for the same again wherever its passes swing between few states.
   */
  public List<Checked> framed(List<Object> given, Supplier<List<Checked>> work) {
    return retention == Retention.NOTHING ? work.get() : checks.of(given, work);
  }

  /** The findings of a phase, by the facts that its rules read. */
  public List<Fired> findings(Phase phase, List<Fact> facts, Supplier<List<Fired>> work) {
    return retention == Retention.MANY_RUNS
        ? findings.of(new Asked(phase, facts), work)
        : work.get();
  }

  /** The frames of a braced walk, by all that they were given. */
  public BracedWalk walk(List<Object> given, Supplier<BracedWalk> work) {
    return retention == Retention.NOTHING ? work.get() : walks.of(given, work);
  }

  public SolvedBeams beams() {
    return retention == Retention.NOTHING ? new SolvedBeams() : beams;
  }
}
