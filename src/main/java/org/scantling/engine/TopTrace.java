package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.Comparator;
import java.util.List;
import org.scantling.confirm.TopLoads;
import org.scantling.design.Geometry;
import org.scantling.loads.FreeRoofRule;
import org.scantling.loads.NetPressureCoefficients;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;

/** How the wind lifts the open top and presses on it: coefficient and covered share. */
final class TopTrace {
  private final CheckContext context;
  private final CalculationSteps steps;
  private final TopLoading top;
  private final FreeRoofRule rule;

  TopTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.top = new TopLoading(context);
    this.rule = top.freeRoof();
  }

  List<CalculationStep> list() {
    TopLoads loads = top.loads();
    double breadthIn = context.geometry().crossbeams().breadthPerSpacingIn();
    double spacingIn = context.geometry().crossbeamSpacingIn();
    NetPressureCoefficients up = rule.cases().stream().min(byPress()).orElseThrow();
    NetPressureCoefficients down = rule.cases().stream().max(byPress()).orElseThrow();
    return List.of(
        steps.of(
            "top.covered-in-leaf",
            Measure.ratio(rule.coveredRatio()),
            doubled(
                Evidence.saw("breadth", Measure.inches(breadthIn))
                    .and("spacing", Measure.inches(spacingIn))
                    .and("timber", Measure.ratio(breadthIn / spacingIn))
                    .and("fill", Measure.ratio(context.vine().canopyFillLeafRatio()))
                    .and("vine", context.answers().option(VINE)))),
        steps.of("wind.uplift", Measure.psf(loads.windUpPsf()), pushed(-up.windwardFactor())),
        steps.of("wind.press", Measure.psf(loads.windDownPsf()), pushed(down.windwardFactor())),
        corner("joint", loads.jointUpPsf(), top.atCorner().jointAreaIn2()),
        corner("post", loads.postUpPsf(), top.atCorner().postAreaIn2()));
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
  private CalculationStep corner(String what, double upPsf, double areaIn2) {
    CornerLift corner = top.atCorner();
    double onePsf =
        context.answers().number(WIND_PRESSURE) * rule.gustFactor() * rule.coveredRatio();
    return steps.of(
        "wind.corner." + what,
        Measure.psf(upPsf),
        pushed(onePsf > 0 ? upPsf / onePsf : 0)
            .and("part", CalculationSteps.area(areaIn2))
            .and("zone", Measure.inches(corner.zoneIn())));
  }

  private static Comparator<NetPressureCoefficients> byPress() {
    return Comparator.comparingDouble(NetPressureCoefficients::windwardFactor);
  }

  private Evidence pushed(double coefficient) {
    return Evidence.saw("pressure", Measure.psf(context.answers().number(WIND_PRESSURE)))
        .and("gust", Measure.ratio(rule.gustFactor()))
        .and("coefficient", Measure.ratio(coefficient))
        .and("covered", Measure.ratio(rule.coveredRatio()))
        .and("flow", top.obstructed() ? "clear or blocked" : "clear");
  }
}
