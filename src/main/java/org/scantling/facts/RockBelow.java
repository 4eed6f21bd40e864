package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.FootSway;
import org.scantling.confirm.FootingWork;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;

/**
 * Solid rock at a depth: whether the holes that the structure wants end above it, and what stands
 * where they cannot. A hole that stops on the rock itself needs no depth for frost (IBC 1809.5);
 * what is lost in depth is made good by a wider collar of concrete.
 */
final class RockBelow {
  private static final String BEDROCK = "bedrock";
  private static final double ROUNDED_IN = 1.0 / 16;
  private static final double JUST_OVER = Math.nextUp(1.0);

  private final DesignProblem problem;
  private final Answers answers;
  private final HoleWithoutRock without;

  RockBelow(DesignProblem problem, CheckContext context) {
    this.problem = problem;
    this.answers = context.answers();
    this.without = new HoleWithoutRock(problem, answers);
  }

  /** How deep the rock lies; nothing where the file tells of none, or all of the ground is rock. */
  OptionalDouble rockIn() {
    boolean rock = answers.has(SOIL) && answers.option(SOIL).equals(BEDROCK);
    return rock ? OptionalDouble.empty() : problem.site().ground().rockAtIn();
  }

  /** True where the holes go down to the rock, for want of depth above it. */
  boolean reached() {
    return rockIn().isPresent() && held() && reached(kind());
  }

  /**
   * Holes that went down to the rock in the pass before stay there: with what stands in them then,
   * less depth may do, and without it more again.
   */
  private boolean reached(String kind) {
    double rockIn = rockIn().orElseThrow();
    boolean before =
        answers
            .find(FOOTING_DEPTH)
            .filter(depth -> Math.abs(depth.number() - rockIn) < ROUNDED_IN)
            .isPresent();
    return before || without.depthIn(kind) > rockIn + ROUNDED_IN;
  }

  /** False on brackets whose braces are still to be found: nothing tells what their piers need. */
  private boolean held() {
    return !kind().equals(WayOfBuilding.BRACKET) || problem.context(answers).braced().isPresent();
  }

  private String kind() {
    return answers.option(FOOTING_KIND);
  }

  /** What is built where holes of that width go down to the rock: concrete all around. */
  CheckContext onRock(double wideIn) {
    return collared(kind(), wideIn);
  }

  /** The same with collars of that width, which lean on soil of their own unless they are close. */
  private CheckContext collared(String kind, double wideIn) {
    return problem.context(
        answers
            .with(Answer.option(FOOTING_KIND, kind))
            .with(Answer.option(FOOTING_BACKFILL, WayOfBuilding.CONCRETE))
            .with(Answer.option(FOOTING_SIDE, side(wideIn))));
  }

  private String side(double wideIn) {
    String may =
        problem
            .site()
            .ground()
            .isolatedPosts()
            .orElseGet(() -> problem.tables().defaults().row("isolated-posts").word());
    double apartIn = Math.min(answers.number(BAY), answers.number(ROW_SPACING));
    boolean close = apartIn < thumb("footing.isolated-spacing-footings") * wideIn;
    return may.equals("yes") && !close ? WayOfBuilding.DOUBLED : WayOfBuilding.AS_TABLED;
  }

  /**
   * From the hole that a post is given anyhow, that of the base where it is wider, to the widest
   * that is poured round one. A narrower one might do by standing apart from its neighbors, and
   * would not be dug.
   */
  private DoubleStream widths() {
    double givenIn = without.standing(kind(), WayOfBuilding.CONCRETE).leastHoleIn();
    double leastIn = Math.max(givenIn, without.provenHoleIn());
    double widestIn = Math.max(leastIn, thumb("rock.hole-widest"));
    return DoubleStream.concat(
        DoubleStream.iterate(leastIn, wideIn -> wideIn < widestIn, wideIn -> wideIn + 1),
        DoubleStream.of(widestIn));
  }

  /** What the rules need to know before it is decided how the posts stand. */
  List<Fact> standing() {
    List<Fact> facts = new ArrayList<>();
    String kind = without.kind();
    boolean braced = kind.equals(WayOfBuilding.BRACKET);
    if (rockIn().isPresent() && !braced && reached(kind)) {
      facts.add(reachedFact(kind));
      facts.add(shallow());
    }
    return facts;
  }

  /** What the rules need to know of the holes. */
  List<Fact> holes() {
    List<Fact> facts = new ArrayList<>();
    if (rockIn().isEmpty() || !held()) {
      return facts;
    }
    double rockIn = rockIn().orElseThrow();
    if (reached()) {
      facts.add(reachedFact(kind()));
      facts.add(
          ByGeometry.worked(
              "rock.hole", HOLE_DIAMETER, holeIn(), Evidence.saw("rock", Measure.inches(rockIn))));
    } else {
      double bedIn = without.bedIn(kind(), answers.option(FOOTING_BACKFILL));
      facts.add(
          ByGeometry.worked(
              "rock.above",
              FOOTING_DEPTH,
              rockIn - bedIn,
              Evidence.saw("rock", Measure.inches(rockIn)).and("bed", Measure.inches(bedIn))));
    }
    return facts;
  }

  /** What a person has to be told of it. */
  Optional<Fact> told() {
    return rockIn().isPresent()
        ? Optional.of(
            reached()
                ? reachedFact(kind())
                : ByGeometry.worked(
                    "rock.above",
                    FOOTING_DEPTH,
                    rockIn().orElseThrow(),
                    Evidence.saw("rock", Measure.inches(rockIn().orElseThrow()))))
        : Optional.empty();
  }

  private Fact reachedFact(String kind) {
    double rockIn = rockIn().orElseThrow();
    double wantedIn = without.depthIn(kind);
    Evidence rock = Evidence.saw("rock", Measure.inches(rockIn));
    return ByGeometry.worked(
        "rock.reached",
        FOOTING_DEPTH,
        rockIn,
        wantedIn > rockIn ? rock.and("wanted", Measure.inches(wantedIn)) : rock);
  }

  /**
   * How far the ground above the rock is from holding a post upright in any collar: over 1 where it
   * does not, or where the foot alone turns more than its share of the sway.
   */
  private Fact shallow() {
    double rockIn = rockIn().orElseThrow();
    double neededIn =
        widths()
            .map(wideIn -> collared(WayOfBuilding.EMBEDDED, wideIn).embedmentIn(wideIn))
            .min()
            .orElseThrow();
    FootSway.Moved moved =
        without.standing(WayOfBuilding.EMBEDDED, WayOfBuilding.CONCRETE).sway().moved(rockIn);
    double turned = moved.turnedIn() / (thumb("rock.turning-share") * moved.mostIn());
    return ByGeometry.worked(
        "rock.shallow",
        FOOTING_KIND,
        Math.max(neededIn / rockIn, leftTheGround() ? Math.max(turned, JUST_OVER) : turned),
        Evidence.saw("rock", Measure.inches(rockIn))
            .and("needed", Measure.inches(neededIn))
            .and("wide", Measure.inches(thumb("rock.hole-widest")))
            .and("turned", Measure.inches(moved.turnedIn()))
            .and("share", new Measure(100 * thumb("rock.turning-share"), Unit.PERCENT)));
  }

  /** Posts that were put on brackets for the rock's sake stay there, as their holes do. */
  private boolean leftTheGround() {
    return kind().equals(WayOfBuilding.BRACKET) && !without.kind().equals(WayOfBuilding.BRACKET);
  }

  /** True where a foot of that depth stands on the rock. */
  boolean stands(double depthIn) {
    return rockIn().isPresent() && depthIn > rockIn().orElseThrow() - ROUNDED_IN;
  }

  /** The narrowest hole that does down to the rock; the widest there is where none does. */
  double holeIn() {
    return widths().filter(this::does).findFirst().orElseGet(() -> widths().max().orElseThrow());
  }

  private boolean does(double wideIn) {
    double rockIn = rockIn().orElseThrow();
    FootingWork work = collared(kind(), wideIn).footing();
    return work.embedment(wideIn).depthIn() <= rockIn
        && work.upliftDepthIn(wideIn, rockIn) <= rockIn
        && work.slidingDepthIn(wideIn, rockIn) <= rockIn;
  }

  private double thumb(String id) {
    return problem.tables().thumb(id).amount();
  }
}
