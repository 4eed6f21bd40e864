package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.moment;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/** Moments in spans, pulling the underside: from the shear at the first support onwards. */
final class SpanMoments {
  private final BeamLines lines;
  private final BeamTask task;
  private final BeamBurden burden;
  private final BeamShears shears;

  SpanMoments(BeamLines lines, BeamShears shears) {
    this.lines = lines;
    this.task = lines.task();
    this.burden = lines.burden();
    this.shears = shears;
  }

  /**
   * Writes the moment at a place.
   *
   * @param fromIn from the first support of the span
   */
  double at(int span, double fromIn) {
    double shear = shears.beside(span, span + 1);
    int region = burden.region(span);
    double near = lines.over(span);
    double sum = shear * fromIn - lines.evenLbPerIn(region) * fromIn * fromIn / 2 - near;
    Evidence evidence =
        Evidence.saw("at", Measure.inches(fromIn))
            .and("shear", pounds(shear))
            .and("load", lines.even(region))
            .and("near", moment(near));
    if (task.onPosts()) {
      int passed = task.passed(fromIn);
      evidence = evidence.and("post", Measure.count(span + 1)).and("passed", Measure.count(passed));
      if (passed > 0) {
        double armsIn = passed * fromIn - task.spacingIn() * passed * (passed + 1) / 2;
        sum -= burden.on(region) * armsIn;
        evidence =
            BeamLines.turnedOn(evidence, "j")
                .and("point", lines.point(region))
                .and("spacing", Measure.inches(task.spacingIn()));
      }
    }
    OptionalDouble person = lines.personAtIn();
    double standsIn = person.orElse(-1) - lines.supportAtIn(span);
    if (person.isPresent() && standsIn > 0 && standsIn < fromIn) {
      sum -= burden.personLb() * (fromIn - standsIn);
      evidence = lines.withPerson(evidence).and("stands", Measure.inches(standsIn));
    }
    return lines.add("moment", moment(sum), evidence);
  }
}
