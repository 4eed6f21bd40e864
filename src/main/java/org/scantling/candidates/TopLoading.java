package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.confirm.TopLoads;
import org.scantling.loads.FreeRoofRule;
import org.scantling.loads.FreeRoofWind;
import org.scantling.loads.KeptSnow;
import org.scantling.loads.NetPressureCoefficients;
import org.scantling.loads.OpenTop;

/** What lies on the open top, and what the wind does to it. */
public final class TopLoading {
  private final CheckContext context;
  private final Answers answers;

  public TopLoading(CheckContext context) {
    this.context = context;
    this.answers = context.answers();
  }

  TopLoads loads() {
    FreeRoofWind canopy = canopy();
    return new TopLoads(
        answers.number(VINE_LOAD),
        answers.number(LIVE_LOAD),
        context.tables().live("live.person").amount(),
        snow().keptPsf(),
        canopy.downforcePsf(),
        canopy.upliftPsf(),
        canopy.atCorner(atCorner().joint()).upliftPsf(),
        canopy.atCorner(atCorner().post()).upliftPsf());
  }

  /** Snow that the top keeps. */
  public KeptSnow snow() {
    return KeptSnow.of(answers.number(SNOW_SHARE), answers.number(FLAT_SNOW));
  }

  /** What the wind does to the whole top. */
  public FreeRoofWind canopy() {
    return FreeRoofWind.on(answers.number(WIND_PRESSURE), freeRoof());
  }

  /** What hangs on one joint or post at the corner of the top, and how hard it is lifted. */
  public CornerLift atCorner() {
    return new CornerLift(context.tables(), context.geometry(), obstructed());
  }

  /**
   * Wind along the walk always finds its way clear; leafy sides stop wind across it, which then
   * sucks harder at the top. The worst of a figure is taken on both halves.
   */
  private FreeRoofRule freeRoof() {
    List<NetPressureCoefficients> cases = new ArrayList<>(ofFigure("clear"));
    if (obstructed()) {
      cases.addAll(ofFigure("obstructed"));
    }
    return new FreeRoofRule(wind("wind.gust"), inLeaf().coveredRatio(), cases);
  }

  /** True where leaves on the sides stop the wind below the top. */
  public boolean obstructed() {
    return context.vine().sideFillLeafRatio() >= wind("wind.free-roof.obstructed-from");
  }

  private List<NetPressureCoefficients> ofFigure(String flow) {
    return List.of(
        NetPressureCoefficients.even(wind("wind.free-roof." + flow + ".down")),
        NetPressureCoefficients.even(-wind("wind.free-roof." + flow + ".up")));
  }

  /**
   * The top that timber and leaves cover in summer. A size that is only tried may be broader than
   * the spacing: it closes the top, and other rules stop it.
   */
  public OpenTop inLeaf() {
    return OpenTop.tried(
        context.geometry().breadthPerSpacingIn(),
        context.geometry().crossbeamSpacingIn(),
        context.vine().canopyFillLeafRatio());
  }

  private double wind(String id) {
    return context.tables().wind(id).amount();
  }
}
