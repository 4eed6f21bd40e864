package org.scantling.workings;

import static org.scantling.reasons.Question.VINE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.SidePush;
import org.scantling.confirm.WindAcross;
import org.scantling.confirm.WindAlong;
import org.scantling.loads.FoliageWind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/**
 * How the wind pushes one post, across the walk and along it: areas, coefficients, force, moment.
 */
final class SideTrace {
  private final CheckContext context;
  private final CalculationSteps steps;

  SideTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  List<CalculationStep> list() {
    WindAcross across = context.wind().onPostAcross();
    WindAlong along = context.wind().onPostAlong();
    List<CalculationStep> list = new ArrayList<>();
    list.addAll(
        steps.of(
            "wind.across.",
            pushed(across, across.push()),
            line ->
                switch (line.id()) {
                  case "leaves" -> climbers(across.leaves());
                  case "edge" -> climbers(across.edge().wind());
                  default -> Evidence.none();
                }));
    list.addAll(
        steps.of(
            "wind.along.",
            pushed(along, along.push()),
            line -> line.id().equals("edge") ? climbers(along.edge().wind()) : Evidence.none()));
    return list;
  }

  /** Posts on brackets are bent as the frames have it. */
  private List<FormulaLine> pushed(Calculated wind, SidePush push) {
    List<FormulaLine> lines = new ArrayList<>(wind.lines());
    if (!context.onBrackets()) {
      lines.addAll(push.lines());
    }
    return lines;
  }

  private Evidence climbers(FoliageWind wind) {
    return Evidence.saw("vine", context.answers().option(VINE))
        .and("season", WorkingLabels.say(wind.worstInLeaf() ? "season.leaf" : "season.bare"));
  }
}
