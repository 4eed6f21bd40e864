package org.scantling.engine;

import static org.scantling.engine.BeamStresses.psi;
import static org.scantling.engine.CalculationSteps.moment;
import static org.scantling.engine.CalculationSteps.perInch;
import static org.scantling.engine.CalculationSteps.pounds;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.confirm.Material;
import org.scantling.confirm.PostScene;
import org.scantling.confirm.SidePush;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;
import org.scantling.timber.Rectangle;

/** Pressure and bending of a post together: each quantity of the interaction, then the sum. */
final class PostTrace {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final Material post;
  private final String check;

  PostTrace(CheckContext context, CalculationSteps steps) {
    this(context, steps, "post.combined");
  }

  /**
   * @param check the check under whose heading the lines stand
   */
  PostTrace(CheckContext context, CalculationSteps steps, String check) {
    this.context = context;
    this.steps = steps;
    this.check = check;
    this.post = context.timber(POST_SIZE);
  }

  /** Of a post that the ground holds. */
  List<CalculationStep> list() {
    Optional<Checked> check =
        context.checks(POST_SIZE, context.answers().option(POST_SIZE)).stream()
            .filter(each -> each.id().equals("post.combined"))
            .findFirst();
    List<CalculationStep> list = new ArrayList<>();
    check.ifPresent(
        each ->
            context
                .posts()
                .heldBy(context.ground())
                .hardest(post, LoadCombination.of(each.combination()))
                .ifPresent(
                    scene -> {
                      list.addAll(BeamTrace.onPost(context, steps, each));
                      list.add(load(scene));
                      list.add(bent(scene));
                      list.addAll(interaction(scene));
                    }));
    return list;
  }

  private CalculationStep load(PostScene scene) {
    double ownLb = post.weightLbPerIn() * scene.heightIn();
    return step(
        scene,
        "load",
        pounds(scene.pressedLb()),
        Evidence.saw("reaction", pounds(scene.pressedLb() - ownLb))
            .and("own", perInch(post.weightLbPerIn()))
            .and("height", Measure.inches(scene.heightIn())));
  }

  private CalculationStep bent(PostScene scene) {
    SidePush push = scene.along() ? context.standing().along() : context.standing().across();
    return step(
        scene,
        "bent",
        moment(scene.momentInLb()),
        Evidence.saw("way", scene.along() ? "along" : "across")
            .and("factor", Measure.ratio(scene.combination().factor(LoadKind.WIND)))
            .and("moment", moment(push.momentAtInLb(0)))
            .and("groundRatio", Measure.ratio(context.ground().bendingRatio(push))));
  }

  /** Pressure on the whole post and what it is allowed. */
  List<CalculationStep> pressure(PostScene scene) {
    List<CalculationStep> list = new ArrayList<>(pressed(scene));
    list.addAll(buckling(scene));
    return list;
  }

  /** From load and moments to the sum. */
  List<CalculationStep> interaction(PostScene scene) {
    List<CalculationStep> list = new ArrayList<>(pressure(scene));
    list.addAll(bending(scene));
    list.add(sum(scene));
    return list;
  }

  private List<CalculationStep> pressed(PostScene scene) {
    Rectangle section = scene.section();
    Measure breadth = Measure.inches(section.breadthIn());
    Measure effective = Measure.inches(scene.endFactor() * scene.heightIn());
    return List.of(
        step(
            scene,
            "pressure",
            psi(scene.column().stressPsi()),
            Evidence.saw("load", pounds(scene.pressedLb())).and("breadth", breadth)),
        step(
            scene,
            "effective-height",
            effective,
            Evidence.saw("factor", Measure.ratio(scene.endFactor()))
                .and("height", Measure.inches(scene.heightIn()))),
        step(
            scene,
            "euler",
            psi(scene.column().governing().criticalStressPsi()),
            Evidence.saw("stiffness", psi(post.lasting(1).elasticityMinimum().psi()))
                .and("effective", effective)
                .and("breadth", breadth)));
  }

  private List<CalculationStep> buckling(PostScene scene) {
    double starPsi = scene.values().compression().psi();
    double ratio = scene.column().governing().criticalStressPsi() / starPsi;
    double mean = (1 + ratio) / (2 * scene.straightnessFactor());
    Measure straight = Measure.ratio(scene.straightnessFactor());
    double factor = scene.column().governing().stabilityFactor();
    return List.of(
        step(
            scene,
            "compression-star",
            psi(starPsi),
            Evidence.saw("lasting", psi(post.lasting(1).compression().psi()))
                .and("duration", duration(scene))),
        step(
            scene,
            "buckling-ratio",
            Measure.ratio(ratio),
            Evidence.saw("euler", psi(scene.column().governing().criticalStressPsi()))
                .and("star", psi(starPsi))),
        step(
            scene,
            "mean",
            Measure.ratio(mean),
            Evidence.saw("ratio", Measure.ratio(ratio)).and("straight", straight)),
        step(
            scene,
            "stability",
            Measure.ratio(factor),
            Evidence.saw("ratio", Measure.ratio(ratio))
                .and("mean", Measure.ratio(mean))
                .and("straight", straight)),
        step(
            scene,
            "compression-allowed",
            psi(starPsi * factor),
            Evidence.saw("star", psi(starPsi)).and("buckled", Measure.ratio(factor))));
  }

  private List<CalculationStep> bending(PostScene scene) {
    Measure breadth = Measure.inches(scene.section().breadthIn());
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        step(
            scene,
            "bending",
            psi(scene.bending().stressPsi()),
            Evidence.saw("moment", moment(scene.momentInLb())).and("breadth", breadth)));
    list.add(
        step(
            scene,
            "bending-allowed",
            psi(scene.values().bending().psi()),
            Evidence.saw("lasting", psi(post.lasting(1).bending().psi()))
                .and("duration", duration(scene))));
    if (scene.crossMomentInLb() > 0) {
      list.add(
          step(
              scene,
              "cross-bending",
              psi(crossPsi(scene)),
              Evidence.saw("solved", moment(scene.crossMomentInLb())).and("breadth", breadth)));
      list.add(
          step(
              scene,
              "rolling",
              psi(scene.stability().criticalStressPsi()),
              Evidence.saw("stiffness", psi(post.lasting(1).elasticityMinimum().psi()))
                  .and("breadth", breadth)
                  .and("lengths", Measure.ratio(lengths(scene)))
                  .and("unbraced", Measure.inches(scene.unbracedIn()))));
    }
    return list;
  }

  /** Effective length over the length that may roll over; a square post cannot, but is asked. */
  private static double lengths(PostScene scene) {
    return scene.stability().effectiveLengthIn() / scene.unbracedIn();
  }

  private static double crossPsi(PostScene scene) {
    return scene.crossMomentInLb() / scene.section().turned().sectionModulusIn3();
  }

  private CalculationStep sum(PostScene scene) {
    double offset = 6 * scene.offsetIn() / scene.section().depthIn();
    Evidence evidence =
        Evidence.saw("pressed", psi(scene.column().stressPsi()))
            .and("allowed", psi(scene.column().allowable().psi()))
            .and("bent", psi(scene.bending().stressPsi()))
            .and("offset", Measure.ratio(offset))
            .and("euler", psi(scene.column().governing().criticalStressPsi()))
            .and("bending", psi(scene.bending().allowable().psi()));
    Measure ratio = Measure.ratio(scene.combined().check().demand());
    return scene.crossMomentInLb() > 0
        ? step(
            scene,
            "combined-both",
            ratio,
            evidence
                .and("cross", psi(crossPsi(scene)))
                .and("crossed", psi(scene.values().bending().psi()))
                .and("rolling", psi(scene.stability().criticalStressPsi())))
        : step(scene, "combined", ratio, evidence);
  }

  private Measure duration(PostScene scene) {
    return Measure.ratio(context.limits().duration().of(scene.combination()));
  }

  private CalculationStep step(PostScene scene, String what, Measure result, Evidence evidence) {
    return steps.of(
        "post.combined." + what,
        result,
        evidence.and("check", check).and("combination", scene.combination().id()));
  }
}
