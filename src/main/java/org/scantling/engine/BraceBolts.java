package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.confirm.BracedWalk;
import org.scantling.confirm.JointBraceChecks;
import org.scantling.confirm.JointBraceChecks.Timber;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointRules;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;

/**
 * Whether a timber is large enough for any of the bolts that a brace can have: a shallow one leaves
 * them too little wood to its edges, a thin one too little to press on.
 *
 * <p>Each timber is asked only about the fastenings that hold in those chosen before it, so that at
 * the end one is left that holds in all of them.
 */
final class BraceBolts {
  private static final String JOINT = "brace.joint";
  private static final String GEOMETRY = "joint.geometry";

  private final Tables tables;
  private final JointBraceChecks checks;
  private final List<JointFix> fastenings;

  BraceBolts(Tables tables, BracedWalk walk, JointRules rules) {
    this.tables = tables;
    this.checks = new JointBraceChecks(walk, rules);
    JointTable table = new JointTable(tables);
    this.fastenings =
        tables.joints().rows().stream()
            .filter(row -> row.question() == Question.BRACE_JOINT)
            .map((JointRow row) -> table.fix(row))
            .toList();
  }

  /** The check of the fastening that holds best in a timber, told as one of that timber. */
  Optional<Checked> best(Timber timber, String id) {
    List<Checked> tried = new ArrayList<>();
    for (JointFix fix : left(timber)) {
      List<Checked> worked = checks.at(timber, fix);
      if (holds(worked, GEOMETRY)) {
        tried.add(joint(worked));
      }
    }
    return tried.stream()
        .min(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(each -> told(each, id));
  }

  /** The fastenings that hold in every timber chosen before this one; all, where none does. */
  private List<JointFix> left(Timber timber) {
    List<JointFix> left = fastenings;
    for (Timber before : Timber.values()) {
      if (before.compareTo(timber) < 0) {
        List<JointFix> holding = left.stream().filter(fix -> holds(before, fix)).toList();
        left = holding.isEmpty() ? left : holding;
      }
    }
    return left;
  }

  private boolean holds(Timber timber, JointFix fix) {
    List<Checked> worked = checks.at(timber, fix);
    return holds(worked, JOINT) && holds(worked, GEOMETRY);
  }

  private boolean holds(List<Checked> worked, String id) {
    double limit = tables.check(id).limitRatio();
    return worked.stream()
        .filter(each -> each.id().equals(id))
        .allMatch(each -> each.check().passes(limit));
  }

  private static Checked joint(List<Checked> worked) {
    return worked.stream().filter(each -> each.id().equals(JOINT)).findFirst().orElseThrow();
  }

  private Checked told(Checked joint, String id) {
    return new Checked(
        id,
        id.substring(0, id.indexOf('.')),
        joint.combination(),
        joint.loadDurationFactor(),
        joint.check(),
        joint.unit(),
        tables.check(id).source());
  }
}
