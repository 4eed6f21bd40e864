package org.scantling.engine;

import java.util.List;
import java.util.function.Supplier;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.SolvedBeams;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.rulebase.Fired;

/**
 * What was worked out already, so that a pass that asks the same again is answered from here.
 *
 * <p>The tables and the rules stay as they are for as long as a ledger lives, and no key names
 * them; whatever else a result depends on is in its key, by value. An engine run owns one; runs of
 * one engine for sites that differ in one demand may share one.
 */
final class Ledger {
  private static final int MOST_CHECKS = 2_000;
  private static final int MOST_FINDINGS = 500;
  private static final int MOST_WALKS = 8;

  private final Memo<List<Object>, List<Checked>> checks = new Memo<>(MOST_CHECKS);
  private final Memo<Asked, List<Fired>> findings = new Memo<>(MOST_FINDINGS);
  private final Memo<List<Object>, BracedWalk> walks = new Memo<>(MOST_WALKS);
  private final SolvedBeams beams = new SolvedBeams();

  private record Asked(Phase phase, List<Fact> facts) {}

  /** The checks of one candidate, by all that they were given. */
  List<Checked> checks(List<Object> given, Supplier<List<Checked>> work) {
    return checks.of(given, work);
  }

  /** The frames of a braced walk, by all that they were given. */
  BracedWalk walk(List<Object> given, Supplier<BracedWalk> work) {
    return walks.of(given, work);
  }

  /** The findings of a phase, by the facts that its rules read. */
  List<Fired> findings(Phase phase, List<Fact> facts, Supplier<List<Fired>> work) {
    return findings.of(new Asked(phase, facts), work);
  }

  SolvedBeams beams() {
    return beams;
  }
}
