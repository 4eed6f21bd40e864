package org.scantling.candidates;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

  /**
   * The check of the fastening that holds best in a timber, told as one of that timber. Where none
   * that holds in the timbers chosen before it finds room in this one, it is the best of those that
   * do find room: a larger timber has room for more. Where none finds room at all, it is the room
   * of the one that comes closest.
   */
  Optional<Checked> best(Timber timber, String id) {
    List<JointFix> roomy =
        fastenings.stream().filter(fix -> holds(checks.at(timber, fix), GEOMETRY)).toList();
    List<Checked> left =
        left(timber).stream()
            .filter(roomy::contains)
            .map(fix -> joint(checks.at(timber, fix)))
            .toList();
    return Stream.of(
            left,
            roomy.stream().map(fix -> hardest(timber, fix)).toList(),
            fastenings.stream().map(fix -> worked(checks.at(timber, fix), GEOMETRY)).toList())
        .filter(tried -> !tried.isEmpty())
        .findFirst()
        .flatMap(tried -> tried.stream().min(Comparator.comparingDouble(BraceBolts::ratio)))
        .map(each -> told(each, id));
  }

  /** The fastenings that hold in every timber chosen before this one; all, where none does. */
  private List<JointFix> left(Timber timber) {
    List<JointFix> left = fastenings;
    for (Timber before : before(timber)) {
      List<JointFix> holding = left.stream().filter(fix -> holds(before, fix)).toList();
      left = holding.isEmpty() ? left : holding;
    }
    return left;
  }

  /** The timbers chosen before one. */
  private static List<Timber> before(Timber timber) {
    return Stream.of(Timber.values()).filter(each -> each.compareTo(timber) < 0).toList();
  }

  /** Where a fastening is worked hardest, of a timber and those before it. */
  private Checked hardest(Timber timber, JointFix fix) {
    return Stream.concat(before(timber).stream(), Stream.of(timber))
        .map(each -> joint(checks.at(each, fix)))
        .max(Comparator.comparingDouble(BraceBolts::ratio))
        .orElseThrow();
  }

  private static double ratio(Checked checked) {
    return checked.check().ratio();
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
    return worked(worked, JOINT);
  }

  private static Checked worked(List<Checked> worked, String id) {
    return worked.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
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
