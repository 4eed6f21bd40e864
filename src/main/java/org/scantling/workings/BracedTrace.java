package org.scantling.workings;

import static org.scantling.reasons.Question.POST_SIZE;
import static org.scantling.workings.CalculationSteps.moment;
import static org.scantling.workings.CalculationSteps.perInch;
import static org.scantling.workings.CalculationSteps.pounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.candidates.BracketChecks;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.BracedScene;
import org.scantling.confirm.SidePush;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/**
 * What the frame of a braced walk came to at its hardest-worked post. A bracket holds no moment, so
 * from the force at its foot statics gives the bending at the knee and the force in the brace.
 */
final class BracedTrace {
  private static final double NOTHING = 1e-6;

  private final CheckContext context;
  private final CalculationSteps steps;
  private final BracedScene scene;
  private final List<CalculationStep> lines = new ArrayList<>();

  private BracedTrace(CheckContext context, CalculationSteps steps, BracedScene scene) {
    this.context = context;
    this.steps = steps;
    this.scene = scene;
  }

  static List<CalculationStep> of(CheckContext context, CalculationSteps steps) {
    Optional<Checked> check =
        context.checks(POST_SIZE, context.answers().option(POST_SIZE)).stream()
            .filter(each -> each.id().equals("post.combined"))
            .findFirst();
    return check
        .flatMap(
            each ->
                BracketChecks.hardestPost(context, LoadCombination.of(each.combination()))
                    // A walk that leans over under its own weight has no numbers to work.
                    .filter(scene -> Double.isFinite(scene.wind().topLb()))
                    .map(scene -> new BracedTrace(context, steps, scene).list(each)))
        .orElse(List.of());
  }

  private List<CalculationStep> list(Checked check) {
    push();
    feet();
    knee();
    pressed();
    // A post that is pulled and bent is not worked by the sum for pressure.
    double sum = scene.post().combined().check().demand();
    if (sum >= check.check().demand() * (1 - NOTHING)) {
      lines.addAll(new PostTrace(context, steps).interaction(scene.post()));
    }
    return lines;
  }

  private void push() {
    if (!(scene.wind().factor() > 0)) {
      return;
    }
    SidePush push = scene.post().along() ? context.standing().along() : context.standing().across();
    double grown = 1 / (1 - scene.wind().verticalLb() / scene.wind().criticalLb());
    Measure more = Measure.ratio(grown);
    Measure factor = Measure.ratio(scene.wind().factor());
    add(
        "lean",
        more,
        Evidence.saw("stands", pounds(scene.wind().verticalLb()))
            .and("critical", pounds(scene.wind().criticalLb())));
    add(
        "top",
        pounds(scene.wind().topLb()),
        Evidence.saw("factor", factor)
            .and("grown", more)
            .and("top", pounds(push.topLb()))
            .and("at", Measure.inches(push.topAtIn()))
            .and("height", Measure.inches(push.heightIn())));
    add(
        "spread",
        perInch(scene.wind().spreadLbPerIn()),
        Evidence.saw("factor", factor)
            .and("grown", more)
            .and("spread", pounds(push.spreadLb()))
            .and("height", Measure.inches(scene.place().heightIn())));
    add(
        "push",
        pounds(scene.sidewaysLb()),
        Evidence.saw("count", Measure.count(scene.place().postCount()))
            .and("top", pounds(scene.wind().topLb()))
            .and("line", perInch(scene.wind().spreadLbPerIn()))
            .and("height", Measure.inches(scene.place().heightIn())));
  }

  private void feet() {
    double footLb = scene.foot().sidewaysLb();
    double pushLb = scene.sidewaysLb();
    add(
        "foot",
        pounds(footLb),
        Evidence.saw("push", pounds(Math.abs(pushLb) < NOTHING ? 0 : pushLb))
            .and("others", pounds(pushLb - footLb)));
    double standsLb = scene.foot().standsLb();
    add(
        "stands",
        pounds(standsLb),
        Evidence.saw("stands", pounds(scene.standsLb()))
            .and("others", pounds(scene.standsLb() - standsLb)));
  }

  private void knee() {
    double footLb = scene.foot().sidewaysLb();
    double line = scene.wind().spreadLbPerIn();
    double belowIn = scene.place().heightIn() - scene.place().legIn();
    double kneeInLb = footLb * belowIn - line * belowIn * belowIn / 2;
    Measure foot = pounds(footLb);
    add(
        "knee",
        moment(kneeInLb),
        Evidence.saw("foot", foot)
            .and("below", Measure.inches(belowIn))
            .and("line", perInch(line)));
    double atIn = scene.mostAtIn();
    if (Math.abs(scene.kneeInLb() - scene.post().momentInLb()) > 1e-6 * scene.kneeInLb()
        && atIn <= belowIn) {
      add(
          "most",
          moment(footLb * atIn - line * atIn * atIn / 2),
          Evidence.saw("foot", foot).and("at", Measure.inches(atIn)).and("line", perInch(line)));
    }
    double sideLb =
        (footLb * scene.place().heightIn()
                - line * scene.place().heightIn() * scene.place().heightIn() / 2)
            / scene.place().legIn();
    add(
        "braces",
        pounds(sideLb),
        Evidence.saw("foot", foot)
            .and("height", Measure.inches(scene.place().heightIn()))
            .and("line", perInch(line))
            .and("leg", Measure.inches(scene.place().legIn())));
    boolean two = Math.abs(scene.braces().otherLb()) > NOTHING;
    Evidence side =
        Evidence.saw("side", pounds(sideLb))
            .and("kind", scene.braces().pulled() ? "pulled" : "pressed");
    add(
        two ? "brace-of-two" : "brace",
        pounds(scene.braces().oneLb()),
        two ? side.and("other", pounds(scene.braces().otherLb())) : side);
  }

  private void pressed() {
    if (scene.pressedAtFoot()) {
      return;
    }
    double ownLbPerIn = context.timber(POST_SIZE).weightLbPerIn();
    double belowIn = scene.place().heightIn() - scene.place().legIn();
    add(
        "neck",
        pounds(scene.post().pressedLb()),
        Evidence.saw("foot", pounds(scene.foot().standsLb()))
            .and("own", perInch(ownLbPerIn))
            .and("below", Measure.inches(belowIn))
            .and("lift", pounds(scene.braces().upLb())));
  }

  private void add(String what, Measure result, Evidence evidence) {
    lines.add(
        steps.of(
            "braced." + what,
            result,
            evidence
                .and("way", scene.post().along() ? "along" : "across")
                .and("number", Measure.count(scene.place().index() + 1))
                .and("combination", scene.post().combination().id())));
  }
}
