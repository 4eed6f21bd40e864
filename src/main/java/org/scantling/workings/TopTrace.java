package org.scantling.workings;

import static org.scantling.reasons.Question.VINE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.TopLoading;
import org.scantling.design.Geometry;
import org.scantling.loads.FreeRoofWind;
import org.scantling.loads.RoofEdgeZone;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/** How the wind lifts the open top and presses on it: coefficient and covered share. */
final class TopTrace {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final TopLoading top;

  TopTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.top = new TopLoading(context);
  }

  List<CalculationStep> list() {
    Evidence vine = Evidence.saw("vine", context.answers().option(VINE));
    Evidence flow =
        Evidence.saw("flow", WorkingLabels.say(top.obstructed() ? "flow.blocked" : "flow.clear"));
    FreeRoofWind canopy = top.canopy();
    List<FormulaLine> covered =
        top.inLeaf().lines().stream().map(line -> line.as("covered-in-leaf")).toList();
    List<CalculationStep> list = new ArrayList<>(steps.of("top.", covered, doubled(vine)));
    list.addAll(steps.of("wind.", canopy.lines(), flow));
    list.addAll(corner("joint", canopy, top.atCorner().joint(), flow));
    list.addAll(corner("post", canopy, top.atCorner().post(), flow));
    return list;
  }

  /** Where two lie side by side at each row of posts, their breadth is shared by all spacings. */
  private Evidence doubled(Evidence plain) {
    Geometry.Crossbeams beams = context.geometry().crossbeams();
    return beams.doubled()
        ? plain
            .and("one", Measure.inches(beams.breadthIn()))
            .and("spaces", Measure.count(beams.perBay()))
        : plain;
  }

  /** At the corner of the top the wind lifts a small part harder than it lifts the whole. */
  private List<CalculationStep> corner(
      String what, FreeRoofWind canopy, RoofEdgeZone.Part part, Evidence flow) {
    List<FormulaLine> lines =
        canopy.atCorner(part).lines().stream()
            .map(line -> line.as(line.id().equals("lift") ? what : what + "." + line.id()))
            .toList();
    return steps.of("wind.corner.", lines, flow);
  }
}
