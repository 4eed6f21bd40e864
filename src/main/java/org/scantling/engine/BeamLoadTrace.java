package org.scantling.engine;

import static org.scantling.engine.CalculationSteps.perInch;
import static org.scantling.engine.CalculationSteps.pounds;
import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.FLAT_SNOW;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;
import static org.scantling.reasons.Question.SNOW_SHARE;
import static org.scantling.reasons.Question.VINE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.HeaderLoad;
import org.scantling.confirm.Material;
import org.scantling.confirm.TopLoads;
import org.scantling.design.Geometry;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/**
 * Own weight, climber, live load, snow and wind on one crossbeam, and what it hands to a header.
 */
final class BeamLoadTrace {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final double spacingIn;

  BeamLoadTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.spacingIn = context.geometry().crossbeamSpacingIn();
  }

  static BeamBurden.Each onCrossbeam(CheckContext context) {
    TopLoads top = context.topLoads();
    double spacingIn = context.geometry().crossbeamSpacingIn();
    return new BeamBurden.Each(
        0,
        context.timber(CROSSBEAM_SIZE).weightLbPerIn(),
        TopLoads.lbPerIn(top.vinePsf(), spacingIn),
        TopLoads.lbPerIn(top.livePsf(), spacingIn),
        TopLoads.lbPerIn(top.snowPsf(), spacingIn),
        TopLoads.lbPerIn(top.windDownPsf(), spacingIn),
        TopLoads.lbPerIn(top.windUpPsf(), spacingIn),
        top.personLb());
  }

  /** Of a pair one board is checked, with its own weight alone. */
  static BeamBurden.Each onHeader(CheckContext context) {
    HeaderLoad each = context.headers().onBoard();
    return onHeader(each, each.windUpLb(), context.timber(HEADER_SIZE).onePly());
  }

  /** On a post all boards of the header weigh, and the wind lifts as hard as at a corner. */
  static BeamBurden.Each onPosts(CheckContext context) {
    HeaderLoad each = context.headers().eachCrossbeam();
    return onHeader(each, each.postUpLb(), context.timber(HEADER_SIZE));
  }

  private static BeamBurden.Each onHeader(HeaderLoad each, double liftLb, Material header) {
    return new BeamBurden.Each(
        header.weightLbPerIn(),
        each.deadLb(),
        each.vinesLb(),
        each.liveLb(),
        each.snowLb(),
        each.windDownLb(),
        liftLb,
        each.personLb());
  }

  List<CalculationStep> list() {
    TopLoads top = context.topLoads();
    BeamBurden.Each line = onCrossbeam(context);
    BeamBurden.Each point = onPosts(context);
    List<CalculationStep> list = new ArrayList<>();
    list.add(
        steps.of(
            "top.snow",
            Measure.psf(top.snowPsf()),
            Evidence.saw("share", Measure.ratio(context.answers().number(SNOW_SHARE)))
                .and("flat", Measure.psf(context.answers().number(FLAT_SNOW)))));
    list.add(own("crossbeam.own", context.timber(CROSSBEAM_SIZE)));
    list.add(strip("vines", line.vinesLb(), vine(top.vinePsf())));
    list.add(strip("live", line.liveLb(), tabled(top.livePsf())));
    list.add(strip("snow", line.snowLb(), pressure(top.snowPsf())));
    list.add(strip("press", line.pressLb(), pressure(top.windDownPsf())));
    list.add(strip("lift", line.liftLb(), pressure(top.windUpPsf())));
    list.add(own("header.own", context.timber(HEADER_SIZE).onePly()));
    if (context.timber(HEADER_SIZE).plies() > 1) {
      list.add(own("header.own-pair", context.timber(HEADER_SIZE)));
    }
    list.add(own("post.own", context.timber(POST_SIZE)));
    if (context.geometry().crossbeams().blocked()) {
      list.addAll(withBlock(line.deadLb(), point.deadLb()));
    } else {
      list.add(half("dead", line.deadLb(), point.deadLb()));
    }
    list.add(half("vines", line.vinesLb(), point.vinesLb()));
    list.add(half("live", line.liveLb(), point.liveLb()));
    list.add(half("snow", line.snowLb(), point.snowLb()));
    list.add(half("press", line.pressLb(), point.pressLb()));
    list.add(half("lift", line.liftLb(), context.headers().eachCrossbeam().windUpLb()));
    list.add(
        steps.of(
            "header.corner-lift",
            pounds(context.headers().eachCrossbeam().postUpLb()),
            pressure(top.postUpPsf())
                .and("spacing", Measure.inches(spacingIn))
                .and("length", Measure.inches(context.geometry().crossbeamLengthIn()))));
    if (context.timber(HEADER_SIZE).plies() > 1) {
      list.addAll(onOneBoard(point));
    }
    return list;
  }

  /** Where one board of a pair takes all, the first load stands for every other. */
  private List<CalculationStep> onOneBoard(BeamBurden.Each point) {
    double share = context.limits().pairShareRatio();
    List<CalculationStep> list = new ArrayList<>();
    list.add(board("of their own weight", share, point.deadLb()));
    if (share < 1) {
      list.add(board("of the climber", share, point.vinesLb()));
      list.add(board("of the live load", share, point.liveLb()));
      list.add(board("of the snow", share, point.snowLb()));
      list.add(board("of the wind pressing down", share, point.pressLb()));
      list.add(board("of the wind lifting", share, context.headers().eachCrossbeam().windUpLb()));
    }
    return list;
  }

  private CalculationStep board(String what, double share, double lb) {
    return steps.of(
        "header.board",
        pounds(share * lb),
        Evidence.saw("what", what).and("share", Measure.ratio(share)).and("point", pounds(lb)));
  }

  private CalculationStep own(String id, Material timber) {
    return steps.of(
        id,
        perInch(timber.weightLbPerIn()),
        Evidence.saw("weight", new Measure(timber.unitWeightPcf(), Unit.PCF))
            .and("breadth", Measure.inches(timber.whole().breadthIn()))
            .and("depth", Measure.inches(timber.whole().depthIn())));
  }

  private CalculationStep strip(String what, double lbPerIn, Evidence pressure) {
    return steps.of(
        "crossbeam." + what, perInch(lbPerIn), pressure.and("spacing", Measure.inches(spacingIn)));
  }

  private static Evidence pressure(double psf) {
    return Evidence.saw("pressure", Measure.psf(psf));
  }

  private static Evidence tabled(double psf) {
    return Evidence.saw("tabled", Measure.psf(psf));
  }

  private Evidence vine(double psf) {
    return tabled(psf).and("vine", context.answers().option(VINE));
  }

  /** A block is of the crossbeam's timber, as long as their gap and as deep as stands clear. */
  private List<CalculationStep> withBlock(double lbPerIn, double lb) {
    Geometry.Crossbeams beams = context.geometry().crossbeams();
    CalculationStep gap =
        steps.of(
            "crossbeam.gap",
            Measure.inches(context.geometry().crossbeamGapIn()),
            Evidence.saw("spacing", Measure.inches(spacingIn))
                .and("breadth", Measure.inches(beams.breadthIn())));
    CalculationStep block =
        steps.of(
            "crossbeam.block",
            Measure.inches(beams.blockDepthIn()),
            Evidence.saw("depth", Measure.inches(beams.depthIn()))
                .and("notch", Measure.inches(beams.notchIn())));
    CalculationStep dead =
        steps.of(
            "header.dead-blocked",
            pounds(lb),
            Evidence.saw("line", perInch(lbPerIn))
                .and("length", Measure.inches(context.geometry().crossbeamLengthIn()))
                .and("gap", Measure.inches(context.geometry().crossbeamGapIn()))
                .and("block", Measure.inches(beams.blockDepthIn()))
                .and("depth", Measure.inches(beams.depthIn())));
    return List.of(gap, block, dead);
  }

  private CalculationStep half(String what, double lbPerIn, double lb) {
    return steps.of(
        "header." + what,
        pounds(lb),
        Evidence.saw("line", perInch(lbPerIn))
            .and("length", Measure.inches(context.geometry().crossbeamLengthIn())));
  }
}
