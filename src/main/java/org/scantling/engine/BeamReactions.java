package org.scantling.engine;

import static org.scantling.engine.WorkingSteps.pounds;

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

  /** A crossbeam lies over every post, and one person may stand there. */
  private double onPost(int support, double first, double second) {
    int region = Math.min(burden.region(support), burden.regions() - 1);
    Evidence evidence =
        Evidence.saw("post", Measure.count(support + 1))
            .and("point", lines.point(region))
            .and("first", pounds(first))
            .and("second", pounds(second));
    OptionalDouble person = lines.personAtIn();
    boolean stands = person.isPresent() && person.getAsDouble() == lines.supportAtIn(support);
    double sum = burden.on(region) + first + second + (stands ? burden.personLb() : 0);
    return stands
        ? lines.add(
            "reaction-person", pounds(sum), evidence.and("person", pounds(burden.personLb())))
        : lines.add("reaction", pounds(sum), evidence);
  }
}
