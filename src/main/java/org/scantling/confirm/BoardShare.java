package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * What the harder worked board of a pair takes of a crossbeam.
 *
 * @param shareRatio share of every load that it takes
 * @param whole what the crossbeam puts on the pair
 * @param load what of it is on the board
 */
public record BoardShare(double shareRatio, HeaderLoad whole, HeaderLoad load)
    implements Calculated {
  static BoardShare of(double shareRatio, HeaderLoad whole) {
    return new BoardShare(shareRatio, whole, whole.times(shareRatio));
  }

  /** Own weight, climber, live load, snow, wind pressing down, wind lifting. */
  @Override
  public List<FormulaLine> lines() {
    return List.of(
        line(whole.deadLb(), load.deadLb()),
        line(whole.vinesLb(), load.vinesLb()),
        line(whole.liveLb(), load.liveLb()),
        line(whole.snowLb(), load.snowLb()),
        line(whole.windDownLb(), load.windDownLb()),
        line(whole.windUpLb(), load.windUpLb()));
  }

  private FormulaLine line(double wholeLb, double lb) {
    return FormulaLine.of("board", Measure.pounds(lb))
        .with("share", Measure.ratio(shareRatio))
        .with("point", Measure.pounds(wholeLb));
  }
}
