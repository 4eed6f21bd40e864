package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.pounds;

import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/** An overhang of a beam: what lies on it levers its support and pushes it down. */
final class BeamTail {
  private final BeamLines lines;
  private final BeamTask task;
  private final int support;
  private final boolean left;
  private final int region;
  private final double lengthIn;

  /**
   * @param support the first or the last of the row
   */
  BeamTail(BeamLines lines, int support) {
    this.lines = lines;
    this.task = lines.task();
    this.support = support;
    this.left = support == 0;
    this.region = left ? 0 : lines.burden().regions() - 1;
    this.lengthIn = left ? lines.scene().leftTailIn() : lines.scene().rightTailIn();
  }

  /**
   * Writes the moment over its support, where there is a tail at all.
   *
   * @param side which tail, or both where they are alike
   */
  void moment(String side) {
    if (!(lengthIn > 0)) {
      return;
    }
    Evidence evidence = withLoad(Evidence.saw("side", side));
    if (carriesCrossbeams()) {
      evidence =
          BeamLines.turnedOn(evidence, "t")
              .and("point", lines.point(region))
              .and("spacing", Measure.inches(task.spacingIn()))
              .and("count", Measure.count(task.crossbeamsOnTail()));
    }
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent() && isOn(person.getAsDouble())) {
      double armIn = Math.abs(lines.supportAtIn(support) - person.getAsDouble());
      evidence = lines.withPerson(evidence).and("arm", Measure.inches(armIn));
    }
    lines.add("tail", CalculationSteps.moment(lines.over(support)), evidence);
  }

  /** Shear beside its support, pushing it down; nothing where there is no tail. */
  double shear() {
    if (!(lengthIn > 0)) {
      return 0;
    }
    double sum = lines.evenLbPerIn(region) * lengthIn;
    Evidence evidence = withLoad(place());
    if (carriesCrossbeams()) {
      sum += lines.burden().on(region) * task.crossbeamsOnTail();
      evidence =
          BeamLines.turnedOn(evidence, "t")
              .and("point", lines.point(region))
              .and("count", Measure.count(task.crossbeamsOnTail()));
    }
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent() && isOn(person.getAsDouble())) {
      sum += lines.burden().personLb();
      evidence = lines.withPerson(evidence);
    }
    return lines.add("tail-shear", pounds(sum), evidence);
  }

  private Evidence place() {
    return task.onPosts()
        ? Evidence.saw("post", Measure.count(support + 1))
        : Evidence.saw("side", left ? "first" : "last");
  }

  private Evidence withLoad(Evidence evidence) {
    return evidence.and("load", lines.even(region)).and("tail", Measure.inches(lengthIn));
  }

  private boolean carriesCrossbeams() {
    return task.onPosts() && task.crossbeamsOnTail() > 0;
  }

  private boolean isOn(double atIn) {
    double supportIn = lines.supportAtIn(support);
    return left ? atIn < supportIn : atIn > supportIn;
  }
}
