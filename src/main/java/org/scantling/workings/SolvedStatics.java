package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.pounds;

import java.util.OptionalDouble;
import org.scantling.design.CrossbeamPlace;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/**
 * The statics of a header over bays that are not alike. Each span is told as a simple one under
 * what lies on it, with the moments over its ends, which are as they were solved.
 */
final class SolvedStatics {
  private final BeamLines lines;
  private final BeamBurden burden;
  private final BeamTask task;

  SolvedStatics(BeamLines lines) {
    this.lines = lines;
    this.burden = lines.burden();
    this.task = lines.task();
  }

  /** Writes the shear beside a support, pushing it down, in the span to another. */
  double shear(int support, int other) {
    double hereIn = lines.supportAtIn(support);
    double thereIn = lines.supportAtIn(other);
    double spanIn = Math.abs(thereIn - hereIn);
    double near = lines.over(support);
    double far = lines.over(other);
    double simpleLb = burden.ownLbPerIn() * spanIn / 2;
    for (CrossbeamPlace place : task.crossbeams()) {
      double lever = leverShare(hereIn, thereIn, task.fromTipIn(place));
      simpleLb += pointLb(Math.min(support, other), place) * lever;
    }
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent()) {
      simpleLb += burden.personLb() * leverShare(hereIn, thereIn, person.getAsDouble());
    }
    return lines.add(
        "solved-shear",
        pounds(simpleLb + (near - far) / spanIn),
        between(support, other)
            .and("simple", pounds(simpleLb))
            .and("near", CalculationSteps.moment(near))
            .and("far", CalculationSteps.moment(far))
            .and("span", Measure.inches(spanIn)));
  }

  /** Writes what the end of a piece presses where two meet, with what lies over the joint. */
  double atCut(int support, int towards) {
    double shear = shear(support, towards);
    double overLb = overLb(support);
    return lines.add(
        "solved-end",
        pounds(overLb + shear),
        between(support, towards).and("over", pounds(overLb)).and("shear", pounds(shear)));
  }

  /** Writes the load on a support, with what lies right over it. */
  double reaction(int support, double firstLb, double secondLb) {
    double overLb = overLb(support);
    return lines.add(
        "solved-reaction",
        pounds(overLb + firstLb + secondLb),
        Evidence.saw("post", Measure.count(support + 1))
            .and("over", pounds(overLb))
            .and("first", pounds(firstLb))
            .and("second", pounds(secondLb)));
  }

  /** Writes the moment at a place in a span, pulling the underside. */
  double moment(int span, double fromIn) {
    double startIn = lines.supportAtIn(span);
    double spanIn = lines.scene().spanIn(span);
    double near = lines.over(span);
    double far = lines.over(span + 1);
    double simple = burden.ownLbPerIn() * fromIn * (spanIn - fromIn) / 2;
    for (CrossbeamPlace place : task.crossbeams()) {
      simple += pointLb(span, place) * bends(task.fromTipIn(place) - startIn, fromIn, spanIn);
    }
    OptionalDouble person = lines.personAtIn();
    if (person.isPresent()) {
      simple += burden.personLb() * bends(person.getAsDouble() - startIn, fromIn, spanIn);
    }
    return lines.add(
        "solved-moment",
        CalculationSteps.moment(simple - near * (spanIn - fromIn) / spanIn - far * fromIn / spanIn),
        Evidence.saw("post", Measure.count(span + 1))
            .and("at", Measure.inches(fromIn))
            .and("simple", CalculationSteps.moment(simple))
            .and("near", CalculationSteps.moment(near))
            .and("far", CalculationSteps.moment(far))
            .and("span", Measure.inches(spanIn)));
  }

  /** Moment of a simple span at a place under 1 lb at another; none of one that is not on it. */
  private static double bends(double loadIn, double atIn, double spanIn) {
    if (loadIn <= 0 || loadIn >= spanIn) {
      return 0;
    }
    return Math.min(loadIn, atIn) * (spanIn - Math.max(loadIn, atIn)) / spanIn;
  }

  /** The crossbeam right over a support, and a person who stands there. */
  private double overLb(int support) {
    double hereIn = lines.supportAtIn(support);
    double overLb = 0;
    for (CrossbeamPlace place : task.crossbeams()) {
      boolean over = Math.abs(task.fromTipIn(place) - hereIn) < BeamTask.NEAR_IN;
      overLb += over ? pointLb(support, place) : 0;
    }
    OptionalDouble person = lines.personAtIn();
    boolean stands = person.isPresent() && person.getAsDouble() == hereIn;
    return overLb + (stands ? burden.personLb() : 0);
  }

  /** Share of a load between two supports that the first takes; none of one over or past them. */
  private static double leverShare(double hereIn, double thereIn, double atIn) {
    double share = (thereIn - atIn) / (thereIn - hereIn);
    boolean inside = share > BeamTask.NEAR_IN && share < 1 - BeamTask.NEAR_IN;
    return inside ? share : 0;
  }

  /** What lies on a crossbeam of a span: its own weight, and its share of the rest. */
  private double pointLb(int span, CrossbeamPlace place) {
    double weightLb = burden.dead() * burden.each().deadLb();
    int region = Math.min(burden.region(span), burden.regions() - 1);
    return weightLb + place.shareRatio() * (burden.on(region) - weightLb);
  }

  private static Evidence between(int support, int other) {
    return Evidence.saw("post", Measure.count(support + 1)).and("other", Measure.count(other + 1));
  }
}
