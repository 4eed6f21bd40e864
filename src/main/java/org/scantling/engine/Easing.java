package org.scantling.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.facts.Confirmation;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Confirmed;
import org.scantling.reasons.Eased;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.tables.CheckRow;

/** The limits that rules have eased in one pass, for the rules and for whoever reads the answer. */
final class Easing {
  private final DesignProblem problem;
  private final List<Eased> eased = new ArrayList<>();

  Easing(DesignProblem problem) {
    this.problem = problem;
  }

  void note(Finding.Ease ease) {
    eased.add(new Eased(ease.check(), ease.ratio()));
  }

  /** What the rules of later phases read. */
  List<Eased> facts() {
    return eased;
  }

  /** What a rule needs to tell which checks pass by the base's record alone. */
  List<Fact> beyondPublished(Confirmation confirmation) {
    List<Fact> facts = new ArrayList<>();
    if (!eased.isEmpty()) {
      facts.addAll(problem.tables().checks().rows());
      confirmation.checks().forEach(each -> facts.add(new Confirmed(each)));
    }
    return facts;
  }

  /** The limits of all checks, with those that are eased. */
  CheckLimits checkLimits() {
    Map<String, Double> limits = new HashMap<>();
    for (CheckRow row : problem.tables().checks().rows()) {
      if (row.limitRatio() < 1) {
        limits.put(row.id(), row.limitRatio());
      }
    }
    Map<String, Double> published = new HashMap<>();
    for (Eased each : eased) {
      limits.put(each.check(), each.ratio());
      published.put(each.check(), problem.tables().check(each.check()).limitRatio());
    }
    return new CheckLimits(limits, published, problem.record());
  }
}
