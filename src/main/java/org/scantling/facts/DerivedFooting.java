package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.FootSway;
import org.scantling.confirm.FootingWork;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.VerticalBearing;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.reasons.Worked;

/** How deep and how wide the holes must be for what pushes, presses, lifts and slides. */
final class DerivedFooting {
  private static final String SWAY = "post.drift";

  private final DesignProblem problem;
  private final CheckContext context;
  private final Answers answers;
  private final FootingWork footing;
  private final RockBelow rock;

  DerivedFooting(DesignProblem problem, CheckContext context) {
    this.problem = problem;
    this.context = context;
    this.answers = context.answers();
    this.rock = new RockBelow(problem, context);
    this.footing = rock.reached() ? rock.onRock(diameterIn()).footing() : context.footing();
  }

  List<Fact> facts() {
    double diameterIn = diameterIn();
    NonConstrainedEmbedment held = footing.embedment(diameterIn);
    VerticalBearing borne = footing.wideEnough(problem.tables().thumb("footing.deepest").amount());
    double deepestIn = problem.tables().thumb("footing.pressure-depth-most").amount();
    List<Fact> facts = new ArrayList<>(rock.holes());
    facts.add(worked("footing.embedment", FOOTING_DEPTH, held.depthIn(), held(held)));
    facts.add(
        worked(
            "footing.bearing",
            HOLE_DIAMETER,
            borne.neededDiameterIn(),
            Evidence.saw("load", new Measure(borne.loadLb(), Unit.POUND))
                .and("allowed", Measure.psf(borne.allowablePsf()))));
    double liftIn = footing.upliftDepthIn(diameterIn, deepestIn);
    // Where no depth holds it down, the deepest that was tried is asked for, and a rule ends the
    // work there.
    facts.add(
        worked(
            "footing.uplift",
            FOOTING_DEPTH,
            Double.isFinite(liftIn) ? liftIn : deepestIn,
            Evidence.none()));
    if (!context.onBrackets()) {
      facts.addAll(sway());
    } else {
      double slidIn = footing.slidingDepthIn(diameterIn, deepestIn);
      facts.add(worked("footing.sliding", FOOTING_DEPTH, slidIn, Evidence.none()));
    }
    return facts;
  }

  /** The hole so far; where it stops on rock, at least as wide as does there. */
  private double diameterIn() {
    double wideIn =
        answers.find(HOLE_DIAMETER).map(each -> each.number()).orElse(context.leastHoleIn());
    return rock.reached() ? Math.max(wideIn, rock.holeIn()) : wideIn;
  }

  private Evidence held(NonConstrainedEmbedment held) {
    Evidence evidence =
        Evidence.saw("push", new Measure(held.load().forceLb(), Unit.POUND))
            .and("height", Measure.inches(held.load().heightIn()))
            .and("width", Measure.inches(held.width().widthIn()))
            .and("across", held.width().kind().word())
            .and("pressure", Measure.psf(held.s1Psf()));
    double increase = context.foot().isolatedFactor();
    return increase > 1 ? evidence.and("increase", Measure.count(increase)) : evidence;
  }

  /** Depths at which bending and the turning of the foot together keep within the sway allowed. */
  private List<Fact> sway() {
    FootSway sway = context.sway();
    List<Fact> facts = new ArrayList<>();
    swayed(sway, "footing.turning", 1).ifPresent(facts::add);
    double record = problem.readsRecord() ? recordRatio() : 0;
    if (record > 1) {
      swayed(sway, "footing.turning-record", record).ifPresent(facts::add);
    }
    return facts;
  }

  /** How far the base itself sways at its own place, of what is allowed; 0 where nobody knows. */
  private double recordRatio() {
    return problem.record().map(each -> each.ratio(SWAY).orElse(0)).orElse(0.0);
  }

  /** Nothing where no hole would do: then it is the post that is too weak. */
  private Optional<Worked> swayed(FootSway sway, String id, double limitRatio) {
    double depthIn = sway.depthIn(limitRatio);
    if (!(depthIn > 0 && depthIn <= problem.tables().thumb("footing.deepest").amount())) {
      return Optional.empty();
    }
    FootSway.Moved moved = sway.moved(depthIn);
    Evidence evidence =
        Evidence.saw("ground", Measure.inches(moved.groundIn()))
            .and("turned", Measure.inches(moved.turnedIn()))
            .and("bent", Measure.inches(moved.bentIn()))
            .and("most", Measure.inches(moved.mostIn()));
    return Optional.of(
        new Worked(id, FOOTING_DEPTH, depthIn, evidence, problem.tables().check(SWAY).source()));
  }

  /** What a check asks for; it bears the name of the check. */
  private Worked worked(String check, Question question, double number, Evidence evidence) {
    return new Worked(check, question, number, evidence, problem.tables().check(check).source());
  }
}
