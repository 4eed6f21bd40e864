package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.Comparator;
import java.util.List;
import org.scantling.confirm.TopLoads;
import org.scantling.loads.FreeRoofRule;
import org.scantling.loads.NetPressureCoefficients;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Working;

/** How the wind lifts the open top and presses on it: coefficient and covered share. */
final class TopWorkings {
  private final Bench bench;
  private final WorkingSteps steps;
  private final TopBench top;
  private final FreeRoofRule rule;

  TopWorkings(Bench bench, WorkingSteps steps) {
    this.bench = bench;
    this.steps = steps;
    this.top = new TopBench(bench);
    this.rule = top.freeRoof();
  }

  List<Working> list() {
    TopLoads loads = top.loads();
    double breadthIn = bench.geometry().crossbeams().breadthIn();
    double spacingIn = bench.geometry().crossbeamSpacingIn();
    NetPressureCoefficients up = rule.cases().stream().min(byPress()).orElseThrow();
    NetPressureCoefficients down = rule.cases().stream().max(byPress()).orElseThrow();
    return List.of(
        steps.of(
            "top.covered-in-leaf",
            Measure.ratio(rule.coveredRatio()),
            Evidence.saw("breadth", Measure.inches(breadthIn))
                .and("spacing", Measure.inches(spacingIn))
                .and("timber", Measure.ratio(breadthIn / spacingIn))
                .and("fill", Measure.ratio(bench.vine().canopyFillLeafRatio()))
                .and("vine", bench.answers().option(VINE))),
        steps.of("wind.uplift", Measure.psf(loads.windUpPsf()), pushed(-up.windwardFactor())),
        steps.of("wind.press", Measure.psf(loads.windDownPsf()), pushed(down.windwardFactor())),
        corner("joint", loads.jointUpPsf(), top.atCorner().jointAreaIn2()),
        corner("post", loads.postUpPsf(), top.atCorner().postAreaIn2()));
  }

  /** At the corner of the top the wind lifts a small part harder than it lifts the whole. */
  private Working corner(String what, double upPsf, double areaIn2) {
    CornerLift corner = top.atCorner();
    double onePsf = bench.answers().number(WIND_PRESSURE) * rule.gustFactor() * rule.coveredRatio();
    return steps.of(
        "wind.corner." + what,
        Measure.psf(upPsf),
        pushed(onePsf > 0 ? upPsf / onePsf : 0)
            .and("part", WorkingSteps.area(areaIn2))
            .and("zone", Measure.inches(corner.zoneIn())));
  }

  private static Comparator<NetPressureCoefficients> byPress() {
    return Comparator.comparingDouble(NetPressureCoefficients::windwardFactor);
  }

  private Evidence pushed(double coefficient) {
    return Evidence.saw("pressure", Measure.psf(bench.answers().number(WIND_PRESSURE)))
        .and("gust", Measure.ratio(rule.gustFactor()))
        .and("coefficient", Measure.ratio(coefficient))
        .and("covered", Measure.ratio(rule.coveredRatio()))
        .and("flow", top.obstructed() ? "clear or blocked" : "clear");
  }
}
