package org.scantling.shop;

import java.util.OptionalDouble;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.JointRow;

/** Steel parts that their makers rate: brackets, straps, hangers, post bases. */
final class MakersParts {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Built built;
  private final InchSizes sizes;

  MakersParts(Built built) {
    this.built = built;
    this.sizes = new InchSizes(built);
  }

  /**
   * Angle brackets, straps or post caps.
   *
   * @param what the piece that they hold
   */
  Fixing holding(String what, JointRow joint, int joints) {
    String name =
        SAYINGS.say(
            "part." + what,
            "lift",
            pounds(joint.ratedLiftLb()),
            "side",
            pounds(joint.ratedSideLb()));
    return part(joint, sizes.rated(name), joints, what);
  }

  /** Under the lower header at every step. */
  Fixing hangers(JointRow joint, int steps) {
    String name =
        SAYINGS.say(
            "part.hanger",
            "size",
            built.member("header").size(),
            "down",
            pounds(joint.ratedDownLb()),
            "lift",
            pounds(joint.ratedLiftLb()),
            "side",
            pounds(joint.ratedSideLb()));
    return part(joint, sizes.rated(name), steps, "step");
  }

  Fixing bases(JointRow joint, int posts) {
    return part(joint, joint.fasteners(), posts, "foot");
  }

  private static Fixing part(JointRow joint, String name, int joints, String use) {
    int count = joint.count() * joints;
    return new Fixing(joint.id(), name, count, SAYINGS.say("use." + use)).rated(rating(joint));
  }

  /** What braced posts stand on. */
  Fixing brackets(int posts) {
    Rating rating = built.bracketRating();
    String name = SAYINGS.say("part.bracket", "rating", sizes.rated(BracketLoads.told(rating)));
    return new Fixing("bracket", name, posts, SAYINGS.say("use.foot")).rated(rating);
  }

  private static String pounds(OptionalDouble rated) {
    return Long.toString(Math.round(rated.orElse(0)));
  }

  private static Rating rating(JointRow joint) {
    boolean carries = joint.question() == Question.RAIL_JOINT;
    double liftLb = joint.ratedLiftLb().orElse(0);
    return new Rating(
        carries ? 0 : liftLb,
        joint.ratedSideLb().orElse(0),
        carries ? liftLb : joint.ratedDownLb().orElse(0));
  }
}
