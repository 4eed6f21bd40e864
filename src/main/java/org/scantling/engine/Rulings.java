package org.scantling.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBase;

/**
 * What the rules find, phase by phase, for one job. Only facts that rules of the phase can match
 * are laid before them, and where those are the same as before, so are the findings.
 */
final class Rulings {
  private final RuleBase rules;
  private final Predicate<String> allowed;
  private final CommonRows rows;
  private final Job job;
  private final Map<Phase, List<Fact>> ofTheJob = new EnumMap<>(Phase.class);

  /**
   * @param allowed the rules that may fire, by id
   * @param rows the table rows that any phase may read
   */
  Rulings(RuleBase rules, Predicate<String> allowed, CommonRows rows, Job job) {
    this.rules = rules;
    this.allowed = allowed;
    this.rows = rows;
    this.job = job;
  }

  /**
   * @param facts what was laid out for the phase, besides what holds throughout the job
   */
  List<Fired> on(Phase phase, List<Fact> facts) {
    List<Fact> read = new ArrayList<>(rows.of(phase));
    read.addAll(ofTheJob.computeIfAbsent(phase, each -> rules.read(each, job.facts())));
    read.addAll(rules.read(phase, facts));
    return job.ledger().findings(phase, read, () -> rules.run(phase, read, allowed));
  }
}
