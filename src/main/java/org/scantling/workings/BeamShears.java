package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.moment;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/** Shears beside supports, pushing the support down. */
final class BeamShears {
  private final BeamLines lines;
  private final BeamTask task;
  private final BeamBurden burden;

  BeamShears(BeamLines lines) {
    this.lines = lines;
    this.task = lines.task();
    this.burden = lines.burden();
  }

  /**
   * Writes the shear beside a support.
   *
   * @param other the support at the other end of the span; outside the row for a tail
   */
  double beside(int support, int other) {
    boolean tail = other < 0 || other > lines.lastSupport();
    return tail ? new BeamTail(lines, support).shear() : inSpan(support, other);
  }

  private double inSpan(int support, int other) {
    int span = Math.min(support, other);
    int region = burden.region(span);
    double spanIn = lines.scene().spanIn(span);
    double far = lines.over(other);
    double near = lines.over(support);
    double even = lines.evenLbPerIn(region) * spanIn / 2;
    double points = task.onPosts() ? burden.on(region) * (task.spaces() - 1) / 2 : 0;
    double sum = even + points + (near - far) / spanIn;
    Evidence evidence =
        places(support, other)
            .and("load", lines.even(region))
            .and("span", Measure.inches(spanIn))
            .and("near", moment(near))
            .and("far", moment(far));
    evidence = lines.withCrossbeams(evidence, span);
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent() && between(person.getAsDouble(), support, other)) {
      double beyondIn = Math.abs(lines.supportAtIn(other) - person.getAsDouble());
      sum += burden.personLb() * beyondIn / spanIn;
      evidence = lines.withPerson(evidence).and("beyond", Measure.inches(beyondIn));
    }
    return lines.add("shear", pounds(sum), evidence);
  }

  private Evidence places(int support, int other) {
    return task.onPosts()
        ? Evidence.saw("post", Measure.count(support + 1)).and("other", Measure.count(other + 1))
        : Evidence.saw("side", support == 0 ? "first" : "last");
  }

  private boolean between(double atIn, int support, int other) {
    double hereIn = lines.supportAtIn(support);
    double thereIn = lines.supportAtIn(other);
    return atIn > Math.min(hereIn, thereIn) && atIn < Math.max(hereIn, thereIn);
  }
}
