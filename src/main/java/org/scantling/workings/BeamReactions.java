package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.pounds;

import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;

/** Loads on supports, from the shears on both sides and what lies right over them. */
final class BeamReactions {
  private final BeamLines lines;
  private final BeamBurden burden;
  private final BeamShears shears;

  BeamReactions(BeamLines lines, BeamShears shears) {
    this.lines = lines;
    this.burden = lines.burden();
    this.shears = shears;
  }

  /** Writes the load on a support. */
  double on(int support) {
    double first = shears.beside(support, support - 1);
    double second = shears.beside(support, support + 1);
    return lines.task().onPosts()
        ? onPost(support, first, second)
        : lines.add(
            "reaction",
            pounds(first + second),
            Evidence.saw("side", support == 0 ? "first" : "last")
                .and("first", pounds(first))
                .and("second", pounds(second)));
  }

  /**
   * Writes what the end of a piece presses where two meet.
   *
   * @param support the support under the joint
   * @param towards the next support of that piece
   */
  double atCut(int support, int towards) {
    double shear = shears.beside(support, towards);
    int region = burden.region(support);
    double over = burden.on(region);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("other", Measure.count(towards + 1))
            .and("point", lines.point(region))
            .and("shear", pounds(shear));
    if (stands(support)) {
      over += burden.personLb();
      evidence = lines.withPerson(evidence);
    }
    return lines.add("end", pounds(over + shear), evidence);
  }

  private boolean stands(int support) {
    OptionalDouble person = lines.personAtIn();
    return person.isPresent() && person.getAsDouble() == lines.supportAtIn(support);
  }

  /** A crossbeam lies over every post, and one person may stand there. */
  private double onPost(int support, double first, double second) {
    int region = Math.min(burden.region(support), burden.regions() - 1);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("point", lines.point(region))
            .and("first", pounds(first))
            .and("second", pounds(second));
    boolean stands = stands(support);
    double sum = burden.on(region) + first + second + (stands ? burden.personLb() : 0);
    return stands
        ? lines.add(
            "reaction-person", pounds(sum), evidence.and("person", pounds(burden.personLb())))
        : lines.add("reaction", pounds(sum), evidence);
  }
}
