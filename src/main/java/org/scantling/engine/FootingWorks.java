package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.FootingWork;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.VerticalBearing;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.reasons.Worked;

/** How deep and how wide the holes must be for what pushes, presses, lifts and slides. */
final class FootingWorks {
  private final Job job;
  private final Bench bench;
  private final Answers answers;
  private final FootingWork footing;

  FootingWorks(Job job, Bench bench) {
    this.job = job;
    this.bench = bench;
    this.answers = bench.answers();
    this.footing = bench.footing();
  }

  List<Fact> facts() {
    double diameterIn = answers.find(HOLE_DIAMETER).map(each -> each.number()).orElse(leastHole());
    NonConstrainedEmbedment held = footing.embedment(diameterIn);
    VerticalBearing borne = footing.wideEnough(job.tables().thumb("footing.deepest").amount());
    double deepestIn = job.tables().thumb("footing.pressure-depth-most").amount();
    List<Fact> facts = new ArrayList<>();
    facts.add(
        worked(
            "footing.embedment",
            FOOTING_DEPTH,
            held.depthIn(),
            Evidence.saw("push", new Measure(held.load().forceLb(), Unit.POUND))
                .and("height", Measure.inches(held.load().heightIn()))
                .and("width", Measure.inches(held.width().widthIn()))
                .and("across", held.width().kind().word())
                .and("pressure", Measure.psf(held.s1Psf()))
                .and("increase", Measure.count(increase()))));
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
    if (bench.onBrackets()) {
      double slidIn = footing.slidingDepthIn(diameterIn, deepestIn);
      facts.add(worked("footing.sliding", FOOTING_DEPTH, slidIn, Evidence.none()));
    }
    return facts;
  }

  private double increase() {
    return job.tables().thumb("footing.isolated-factor").amount();
  }

  private double leastHole() {
    double postIn = job.stock().row(answers.option(POST_SIZE)).thicknessIn();
    return postIn * job.tables().thumb("hole.width-in-posts").amount();
  }

  /** What a check asks for; it bears the name of the check. */
  private Worked worked(String check, Question question, double number, Evidence evidence) {
    return new Worked(check, question, number, evidence, job.tables().check(check).source());
  }
}
