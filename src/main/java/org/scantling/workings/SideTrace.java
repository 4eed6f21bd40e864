package org.scantling.workings;

import static org.scantling.reasons.Question.VINE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.HighRow;
import org.scantling.confirm.SidePush;
import org.scantling.confirm.WindAcross;
import org.scantling.confirm.WindAlong;
import org.scantling.confirm.WindOnWalk;
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
    list.addAll(across(across, pushed(across, across.push()), Evidence.none()));
    list.addAll(along(along, pushed(along, along.push()), Evidence.none()));
    if (!context.onBrackets()) {
      context.standing().high().ifPresent(row -> list.addAll(high(row)));
    }
    return list;
  }

  private List<CalculationStep> across(WindAcross across, List<FormulaLine> lines, Evidence about) {
    return steps.of(
        "wind.across.",
        lines,
        line ->
            switch (line.id()) {
              case "leaves" -> climbers(across.leaves()).and(about);
              case "edge" -> climbers(across.edge().wind()).and(about);
              default -> about;
            });
  }

  private List<CalculationStep> along(WindAlong along, List<FormulaLine> lines, Evidence about) {
    return steps.of(
        "wind.along.",
        lines,
        line -> line.id().equals("edge") ? climbers(along.edge().wind()).and(about) : about);
  }

  /** What comes to the posts on the higher ground, and what they take over. */
  private List<CalculationStep> high(HighRow row) {
    WindOnWalk wind = context.windOnHigherRow().orElseThrow();
    Evidence higher = Evidence.saw("higher", "");
    List<CalculationStep> list = new ArrayList<>();
    list.addAll(across(wind.onPostAcross(), wind.onPostAcross().lines(), higher));
    list.addAll(steps.of("wind.high-across.", row.across().lines(), Evidence.none()));
    list.addAll(along(wind.onPostAlong(), wind.onPostAlong().lines(), higher));
    list.addAll(steps.of("wind.high-along.", row.along().lines(), Evidence.none()));
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
