package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What lies on each inch of one crossbeam besides its own weight, and what the wind does to it.
 *
 * @param top what lies on the top and blows over it
 * @param spacingIn breadth of the strip that is the crossbeam's own
 * @param vinesLbPerIn climbers
 * @param liveLbPerIn live load
 * @param snowLbPerIn snow that the open top keeps
 * @param pressLbPerIn wind pressing down, strength level
 * @param liftLbPerIn wind lifting, strength level, positive
 */
public record StripLoad(
    TopLoads top,
    double spacingIn,
    double vinesLbPerIn,
    double liveLbPerIn,
    double snowLbPerIn,
    double pressLbPerIn,
    double liftLbPerIn)
    implements Calculated {
  static StripLoad of(TopLoads top, double spacingIn) {
    return new StripLoad(
        top,
        spacingIn,
        TopLoads.lbPerIn(top.vinePsf(), spacingIn),
        TopLoads.lbPerIn(top.livePsf(), spacingIn),
        TopLoads.lbPerIn(top.snowPsf(), spacingIn),
        TopLoads.lbPerIn(top.windDownPsf(), spacingIn),
        TopLoads.lbPerIn(top.windUpPsf(), spacingIn));
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        line("vines", vinesLbPerIn, "tabled", top.vinePsf()),
        line("live", liveLbPerIn, "tabled", top.livePsf()),
        line("snow", snowLbPerIn, "pressure", top.snowPsf()),
        line("press", pressLbPerIn, "pressure", top.windDownPsf()),
        line("lift", liftLbPerIn, "pressure", top.windUpPsf()));
  }

  private FormulaLine line(String id, double lbPerIn, String of, double psf) {
    return FormulaLine.of(id, new Measure(lbPerIn, Unit.POUND_PER_INCH))
        .with(of, Measure.psf(psf))
        .with("spacing", Measure.inches(spacingIn));
  }
}
