package org.scantling.engine;

import static org.scantling.engine.CalculationSteps.area;
import static org.scantling.engine.CalculationSteps.feet;
import static org.scantling.engine.CalculationSteps.pounds;
import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.SidePush;
import org.scantling.confirm.WindFace;
import org.scantling.confirm.WindOnWalk;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.FoliageWind;
import org.scantling.loads.SideWind;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/**
 * How the wind pushes one post, across the walk or along it: areas, coefficients, force, moment.
 */
final class SideTrace {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final WindOnWalk wind;
  private final boolean across;
  private final WindFace face;
  private final SideWind side;
  private final SidePush push;

  private SideTrace(CheckContext context, CalculationSteps steps, boolean across) {
    this.context = context;
    this.steps = steps;
    this.wind = context.wind();
    this.across = across;
    this.face = across ? wind.sideFace() : wind.gableFace();
    this.side = wind.on(face);
    this.push = across ? wind.across() : wind.along();
  }

  static SideTrace across(CheckContext context, CalculationSteps steps) {
    return new SideTrace(context, steps, true);
  }

  static SideTrace along(CheckContext context, CalculationSteps steps) {
    return new SideTrace(context, steps, false);
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    list.add(step("solid", area(face.solidIn2()), pieces()));
    list.add(
        step(
            "gross",
            area(face.grossIn2()),
            Evidence.saw("length", feet(face.lengthIn())).and("height", feet(face.heightIn()))));
    list.add(pressure());
    list.add(timber());
    list.addAll(across ? sides() : ends());
    if (context.onBrackets()) {
      return list;
    }
    list.add(
        step(
            "moment",
            new Measure(push.momentAtInLb(0), Unit.INCH_POUND),
            Evidence.saw("top", pounds(push.topLb()))
                .and("at", Measure.inches(push.topAtIn()))
                .and("spread", pounds(push.spreadLb()))
                .and("height", Measure.inches(push.heightIn()))));
    return list;
  }

  private CalculationStep step(String what, Measure result, Evidence evidence) {
    return steps.of((across ? "wind.across." : "wind.along.") + what, result, evidence);
  }

  private Evidence pieces() {
    return across
        ? Evidence.saw("headers", area(face.beamsIn2()))
            .and("ends", area(face.endsIn2()))
            .and("posts", area(face.postsIn2()))
            .and("rails", area(face.railsIn2()))
            .and("pickets", area(face.picketsIn2()))
            .and("share", Measure.ratio(face.picketTopRatio()))
        : Evidence.saw("crossbeams", area(face.beamsIn2())).and("posts", onePost());
  }

  private CalculationStep pressure() {
    double solidity = side.panel().solidityRatio();
    Evidence evidence =
        Evidence.saw("pressure", Measure.psf(wind.rules().pressurePsf()))
            .and("gust", Measure.ratio(wind.rules().lattice().gustFactor()))
            .and("cf", Measure.ratio(side.cfFactor()))
            .and("least", Measure.psf(wind.rules().lattice().minimumPsf()))
            .and("solid", area(face.solidIn2()))
            .and("gross", area(face.grossIn2()))
            .and("solidity", Measure.ratio(solidity));
    boolean less = side.solidityRatio() < solidity;
    if (!side.wall()) {
      double plainPsf = plainPsf();
      boolean least = side.pressurePsf() > plainPsf * (1 + 1e-9);
      return step(
          least ? "least" : "pressure",
          Measure.psf(plainPsf),
          less ? evidence.and("less", Measure.ratio(side.solidityRatio())) : evidence);
    }
    return step(
        "wall",
        Measure.psf(side.pressurePsf()),
        less ? evidence.and("less", Measure.ratio(side.solidityRatio())) : evidence);
  }

  /** Before the least that the standard wants. */
  private double plainPsf() {
    return wind.rules().pressurePsf() * wind.rules().lattice().gustFactor() * side.cfFactor();
  }

  /** The solidity is that of the frame with less timber where such a one would take more. */
  private CalculationStep timber() {
    Evidence outline =
        Evidence.saw("pressure", Measure.psf(side.pressurePsf()))
            .and("gross", area(face.grossIn2()));
    return side.wall()
        ? step("closed", pounds(side.forceLb()), outline)
        : step(
            "timber",
            pounds(side.forceLb()),
            outline.and("solidity", Measure.ratio(side.solidityRatio())));
  }

  private List<CalculationStep> sides() {
    FoliageWind leaves = wind.leaves();
    boolean inLeaf = leaves.inLeafLb() >= leaves.bareLb();
    FoliageCover cover = inLeaf ? wind.rules().inLeaf() : wind.rules().bare();
    Evidence shared = pieces().and("force", pounds(side.forceLb())).and("solid", solid());
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        step(
            "leaves",
            pounds(leaves.worstLb()),
            Evidence.saw("pressure", Measure.psf(wind.rules().pressurePsf()))
                .and("fill", Measure.ratio(cover.fillRatio()))
                .and("drag", Measure.ratio(cover.dragFactor()))
                .and("open", area(leaves.areaIn2()))
                .and("vine", context.answers().option(VINE))
                .and("season", inLeaf ? "in leaf" : "bare")));
    list.addAll(top(shared.and("at", Measure.inches(push.topAtIn()))));
    list.add(
        step(
            "spread",
            pounds(push.spreadLb()),
            shared
                .and("leaves", pounds(leaves.worstLb()))
                .and("height", Measure.inches(push.heightIn()))));
    return list;
  }

  /** On the timber up there, and on the edge of the climbers that lie on it. */
  private List<CalculationStep> top(Evidence timber) {
    FoliageWind edge = across ? wind.edge() : wind.end();
    return edge.worstLb() > 0
        ? List.of(
            edge(edge),
            step("top-leafy", pounds(push.topLb()), timber.and("edge", pounds(edge.worstLb()))))
        : List.of(step("top", pounds(push.topLb()), timber));
  }

  private CalculationStep edge(FoliageWind edge) {
    boolean inLeaf = edge.inLeafLb() >= edge.bareLb();
    FoliageCover cover = inLeaf ? wind.rules().mat().inLeaf() : wind.rules().mat().bare();
    return step(
        "edge",
        pounds(edge.worstLb()),
        Evidence.saw("pressure", Measure.psf(wind.rules().pressurePsf()))
            .and("fill", Measure.ratio(cover.fillRatio()))
            .and("drag", Measure.ratio(cover.dragFactor()))
            .and("open", area(edge.areaIn2()))
            .and("thick", Measure.inches(wind.rules().mat().thickIn()))
            .and("at", Measure.inches(across ? wind.edgeAtIn() : wind.endAtIn()))
            .and("vine", context.answers().option(VINE))
            .and("season", inLeaf ? "in leaf" : "bare"));
  }

  private List<CalculationStep> ends() {
    Evidence shared = pieces().and("force", pounds(side.forceLb())).and("solid", solid());
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        step(
            "beams",
            Measure.ratio(wind.windwardCount()),
            Evidence.saw("share", Measure.ratio(wind.leeRatio()))
                .and("count", Measure.count(context.geometry().crossbeamCount()))));
    list.addAll(
        top(
            shared
                .and("beams", Measure.ratio(wind.windwardCount()))
                .and("postCount", Measure.count(context.geometry().postCount()))
                .and("at", Measure.inches(push.topAtIn()))));
    list.add(
        step(
            "spread",
            pounds(push.spreadLb()),
            shared.and("height", Measure.inches(push.heightIn()))));
    return list;
  }

  private Measure solid() {
    return area(face.solidIn2());
  }

  private Measure onePost() {
    return area(face.postsIn2() / 2);
  }
}
