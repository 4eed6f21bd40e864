package org.scantling.workings;

import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;
import static org.scantling.reasons.Question.VINE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.TopLoading;
import org.scantling.confirm.BoardShare;
import org.scantling.confirm.HeaderLoad;
import org.scantling.confirm.Material;
import org.scantling.confirm.StripLoad;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/**
 * Own weight, climber, live load, snow and wind on one crossbeam, and what it hands to a header.
 */
final class BeamLoadTrace {
  /** The loads of which a board takes its share, in that order. */
  private static final List<String> SHARED =
      List.of(
          "share.weight",
          "share.climber",
          "share.live",
          "share.snow",
          "share.wind-down",
          "share.wind-up");

  /** Sizes of the block beside a crossbeam. */
  private static final Set<String> OF_CROSSBEAM = Set.of("gap", "block");

  private final CheckContext context;
  private final CalculationSteps steps;

  BeamLoadTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  static BeamBurden.Each onCrossbeam(CheckContext context) {
    StripLoad strip = context.crossbeams().strip();
    return new BeamBurden.Each(
        0,
        context.timber(CROSSBEAM_SIZE).weightLbPerIn(),
        strip.vinesLbPerIn(),
        strip.liveLbPerIn(),
        strip.snowLbPerIn(),
        strip.pressLbPerIn(),
        strip.liftLbPerIn(),
        strip.top().personLb());
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
    Material header = context.timber(HEADER_SIZE);
    boolean paired = header.plies() > 1;
    List<CalculationStep> list = new ArrayList<>();
    list.addAll(told("top.", new TopLoading(context).snow()));
    list.addAll(told("crossbeam.", context.timber(CROSSBEAM_SIZE).weight()));
    list.addAll(strip(context.crossbeams().strip()));
    list.addAll(told("header.", header.onePly().weight()));
    if (paired) {
      List<FormulaLine> both =
          header.weight().lines().stream().map(line -> line.as("own-pair")).toList();
      list.addAll(steps.of("header.", both, Evidence.none()));
    }
    list.addAll(told("post.", context.timber(POST_SIZE).weight()));
    for (FormulaLine line : context.headers().crossbeam().lines()) {
      String prefix = OF_CROSSBEAM.contains(line.id()) ? "crossbeam." : "header.";
      list.addAll(steps.of(prefix, List.of(line), Evidence.none()));
    }
    if (paired) {
      list.addAll(onOneBoard(context.headers().share()));
    }
    return list;
  }

  private List<CalculationStep> told(String prefix, Calculated worked) {
    return steps.of(prefix, worked.lines(), Evidence.none());
  }

  private List<CalculationStep> strip(StripLoad strip) {
    Evidence vine = Evidence.saw("vine", context.answers().option(VINE));
    return steps.of(
        "crossbeam.", strip.lines(), line -> line.id().equals("vines") ? vine : Evidence.none());
  }

  /** Where one board of a pair takes all, the first load stands for every other. */
  private List<CalculationStep> onOneBoard(BoardShare share) {
    List<FormulaLine> lines = share.lines();
    List<CalculationStep> list = new ArrayList<>();
    for (int i = 0; i < (share.shareRatio() < 1 ? lines.size() : 1); i++) {
      list.addAll(
          steps.of(
              "header.",
              lines.subList(i, i + 1),
              Evidence.saw("what", WorkingLabels.say(SHARED.get(i)))));
    }
    return list;
  }
}
