package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.moment;
import static org.scantling.workings.CalculationSteps.perInch;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/**
 * The moments over supports: over the end ones from the tails alone, over an inner one from its two
 * spans and its neighbours by the theorem of three moments.
 */
final class SupportMoments {
  /** Supports that a line can name. */
  private static final int LISTED = 16;

  /** A moment this small beside what it is made of cannot be gone over in four figures. */
  private static final double CANCELS_OUT_RATIO = 0.02;

  private final BeamLines lines;
  private final BeamTask task;
  private final BeamBurden burden;
  private final BeamRegions regions;

  SupportMoments(BeamLines lines) {
    this.lines = lines;
    this.task = lines.task();
    this.burden = lines.burden();
    this.regions = new BeamRegions(task, burden);
  }

  /** The moments over some supports and what they follow from. */
  void write(Set<Integer> supports) {
    Set<Integer> told = new TreeSet<>(supports);
    supports.stream().filter(this::inner).forEach(each -> told.addAll(List.of(each - 1, each + 1)));
    tails(told);
    List<Integer> inner = supports.stream().filter(this::inner).sorted().toList();
    boolean others = told.stream().filter(this::inner).count() > inner.size();
    if (others || inner.stream().anyMatch(this::cancelsOut)) {
      list(inner.get(0));
    }
    inner.stream().filter(each -> !cancelsOut(each)).forEach(this::threeMoments);
  }

  /** All of them in one line, where bays are not alike. */
  void writeSolved() {
    list(0);
  }

  /** A support that the beam runs on over; where two pieces meet there is no moment. */
  private boolean inner(int support) {
    boolean between = support > 0 && support < lines.lastSupport();
    return between && !lines.scene().beam().cuts().contains(support);
  }

  /** Where both ends are alike one line tells both. */
  private void tails(Set<Integer> told) {
    int last = lines.lastSupport();
    boolean alike = CalculationSteps.isNoMoment(lines.over(0) - lines.over(last));
    if (told.contains(0)) {
      new BeamTail(lines, 0)
          .moment(
              alike && told.contains(last)
                  ? WorkingLabels.say("tail.both")
                  : WorkingLabels.say("tail.first"));
    }
    if (told.contains(last) && !(alike && told.contains(0))) {
      new BeamTail(lines, last).moment(WorkingLabels.say("tail.last"));
    }
  }

  /** A long row has more posts than need be told: those about the one that counts. */
  private void list(int about) {
    int count = lines.lastSupport() + 1;
    int from = Math.max(0, Math.min(about - LISTED / 2, count - LISTED));
    int to = Math.min(count, from + LISTED);
    Evidence evidence =
        Evidence.saw("first-post", Measure.count(from + 1)).and("last-post", Measure.count(to));
    for (int support = from; support < to; support++) {
      String name = "m-" + (char) ('a' + support - from);
      evidence = evidence.and(name, moment(lines.over(support)));
    }
    lines.add("moments", moment(lines.over(about)), evidence);
  }

  private boolean cancelsOut(int support) {
    double beside = Math.abs(lines.over(support - 1)) + Math.abs(lines.over(support + 1));
    return Math.abs(lines.over(support)) < CANCELS_OUT_RATIO * beside;
  }

  private void threeMoments(int support) {
    double left = fixed(support - 1);
    double right = fixed(support);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("f-left", moment(left))
            .and("f-right", moment(right))
            .and("left", moment(lines.over(support - 1)))
            .and("right", moment(lines.over(support + 1)));
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent()) {
      evidence = withPersonBeside(evidence, support, person.getAsDouble());
    }
    lines.add("over-post", moment(lines.over(support)), evidence);
  }

  /** One person counts where they stand on one of the two spans, not over a support. */
  private Evidence withPersonBeside(Evidence evidence, int support, double atIn) {
    double hereIn = lines.supportAtIn(support);
    double awayIn = Math.abs(atIn - hereIn);
    double spanIn = lines.scene().spanIn(atIn < hereIn ? support - 1 : support);
    return awayIn > 0 && awayIn < spanIn
        ? lines
            .withPerson(evidence)
            .and("far-off", Measure.inches(spanIn - awayIn))
            .and("span", Measure.inches(spanIn))
        : evidence;
  }

  /** The end moments of a span held stiff at both ends, under the crossbeams and its own weight. */
  private double fixed(int span) {
    double spanIn = lines.scene().spanIn(span);
    int region = burden.region(span);
    int spaces = task.spaces();
    double amount =
        burden.on(region) * spanIn * (spaces * spaces - 1) / (12.0 * spaces)
            + burden.ownLbPerIn() * spanIn * spanIn / 12;
    return lines.add(
        "fixed",
        moment(amount),
        Evidence.saw("where", regions.spansLike(span))
            .and("point", lines.point(region))
            .and("span", Measure.inches(spanIn))
            .and("spaces", Measure.count(spaces))
            .and("load", perInch(burden.ownLbPerIn())));
  }
}
