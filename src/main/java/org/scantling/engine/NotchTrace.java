package org.scantling.engine;

import static org.scantling.engine.BeamStresses.psi;
import static org.scantling.engine.CalculationSteps.moment;
import static org.scantling.engine.CalculationSteps.perInch;
import static org.scantling.engine.CalculationSteps.pounds;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.Material;
import org.scantling.confirm.NotchScene;
import org.scantling.confirm.PostScene;
import org.scantling.confirm.SidePush;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/**
 * A post in the ground where a rail is housed: pressure and bending on what is left, then the sum.
 */
final class NotchTrace {
  private static final String CHECK = "post.rail-notch";

  private final CheckContext context;
  private final CalculationSteps steps;
  private final Material post;

  NotchTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.post = context.timber(POST_SIZE);
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    context.checks(POST_SIZE, context.answers().option(POST_SIZE)).stream()
        .filter(each -> each.id().equals(CHECK))
        .findFirst()
        .ifPresent(check -> add(list, check));
    return list;
  }

  private void add(List<CalculationStep> list, Checked check) {
    context
        .posts()
        .hardestAtNotch(post, LoadCombination.of(check.combination()))
        .ifPresent(
            scene -> {
              list.addAll(BeamTrace.onPost(context, steps, check));
              list.add(load(scene));
              list.addAll(new PostTrace(context, steps, CHECK).pressure(whole(scene)));
              list.addAll(pressed(scene));
              list.addAll(bent(scene));
              list.add(sum(scene));
            });
  }

  /** The whole post under the same load. */
  private PostScene whole(NotchScene scene) {
    return new PostScene(
        scene.combination(),
        post.section(),
        scene.pressedLb(),
        0,
        0,
        scene.along(),
        scene.column(),
        heightIn(scene),
        context.posts().endFactor(post),
        context.limits().straightnessFactor(),
        heightIn(scene),
        scene.stability(),
        0,
        post.lasting(durationFactor(scene)));
  }

  private double durationFactor(NotchScene scene) {
    return context.limits().duration().of(scene.combination());
  }

  private CalculationStep load(NotchScene scene) {
    double aboveIn = heightIn(scene) - context.standing().housingAtIn();
    double ownLb = post.weightLbPerIn() * aboveIn;
    return step(
        scene,
        "load",
        pounds(scene.pressedLb()),
        Evidence.saw("reaction", pounds(scene.pressedLb() - ownLb))
            .and("own", perInch(post.weightLbPerIn()))
            .and("height", Measure.inches(aboveIn)));
  }

  private List<CalculationStep> pressed(NotchScene scene) {
    return List.of(
        step(
            scene,
            "bowing",
            Measure.ratio(bowing(scene)),
            Evidence.saw("whole", psi(scene.column().stressPsi()))
                .and("euler", psi(scene.column().governing().criticalStressPsi()))),
        step(
            scene,
            "left",
            Measure.inches(leftIn(scene)),
            Evidence.saw("breadth", Measure.inches(breadthIn()))
                .and("count", Measure.count(scene.housedFaces()))
                .and("depth", Measure.inches(context.standing().housingDepthIn()))),
        step(
            scene,
            "pressure",
            psi(scene.stressPsi()),
            Evidence.saw("load", pounds(scene.pressedLb()))
                .and("breadth", Measure.inches(breadthIn()))
                .and("left-depth", Measure.inches(leftIn(scene)))));
  }

  private List<CalculationStep> bent(NotchScene scene) {
    SidePush push = push(scene);
    double atIn = context.standing().housingAtIn();
    Measure moment = moment(scene.momentInLb());
    return List.of(
        step(
            scene,
            "bent",
            moment,
            Evidence.saw("way", scene.along() ? "along" : "across")
                .and("factor", Measure.ratio(scene.combination().factor(LoadKind.WIND)))
                .and("top", pounds(push.topLb()))
                .and("arm", Measure.inches(push.topAtIn() - atIn))
                .and("spread", pounds(push.spreadLb()))
                .and("beyond", Measure.inches(push.heightIn() - atIn))
                .and("height", Measure.inches(push.heightIn()))),
        step(
            scene,
            "bending",
            psi(scene.bending().stressPsi()),
            Evidence.saw("moment", moment)
                .and("breadth", Measure.inches(scene.left().breadthIn()))
                .and("depth", Measure.inches(scene.left().depthIn()))),
        step(
            scene,
            "bending-allowed",
            psi(scene.bending().allowable().psi()),
            Evidence.saw("lasting", psi(post.lasting(1).bending().psi()))
                .and("duration", Measure.ratio(durationFactor(scene)))
                .and("solved", Measure.ratio(rolling(scene)))));
  }

  /** C_L of what is left. */
  private double rolling(NotchScene scene) {
    double starPsi = post.lasting(durationFactor(scene)).bending().psi();
    return scene.bending().allowable().psi() / starPsi;
  }

  private CalculationStep sum(NotchScene scene) {
    Evidence evidence =
        Evidence.saw("pressed", psi(scene.stressPsi()))
            .and("allowed", psi(scene.column().allowable().psi()))
            .and("bent", psi(scene.bending().stressPsi()))
            .and("arm", Measure.inches(scene.offsets().bentIn()))
            .and("depth", Measure.inches(scene.left().depthIn()))
            .and("bowing", Measure.ratio(bowing(scene)))
            .and("bending", psi(scene.bending().allowable().psi()));
    Measure ratio = Measure.ratio(scene.combined().check().demand());
    if (!(scene.offsets().crossIn() > 0)) {
      return step(scene, "sum", ratio, evidence);
    }
    Evidence both =
        evidence
            .and("less", Measure.inches(scene.offsets().crossIn()))
            .and("breadth", Measure.inches(scene.left().breadthIn()))
            .and("solved", psi(scene.stability().criticalStressPsi()));
    return step(scene, "sum-across", ratio, both);
  }

  private static double bowing(NotchScene scene) {
    return scene.column().stressPsi() / scene.column().governing().criticalStressPsi();
  }

  private SidePush push(NotchScene scene) {
    return scene.along() ? context.standing().along() : context.standing().across();
  }

  private double heightIn(NotchScene scene) {
    return push(scene).heightIn();
  }

  private double breadthIn() {
    return post.section().breadthIn();
  }

  private double leftIn(NotchScene scene) {
    return scene.along() ? scene.left().depthIn() : scene.left().breadthIn();
  }

  private CalculationStep step(NotchScene scene, String what, Measure result, Evidence evidence) {
    return steps.of(
        "post.notch." + what,
        result,
        evidence.and("check", CHECK).and("combination", scene.combination().id()));
  }
}
