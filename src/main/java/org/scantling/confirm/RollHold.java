package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.timber.ToeNail;

/**
 * What the fasteners of one seat hold against a crossbeam that rolls over the lee edge of its
 * underside: each by its pull times its distance from that edge, wind from the side where the fewer
 * fasteners are.
 *
 * <p>Source: statics; the slant of the fasteners by NDS, 2018, Figure 12A, from memory.
 *
 * @param fix how it is fastened
 * @param pullLb what they hold against lift, all together
 * @param breadthIn of the crossbeam
 * @param leeIn from that edge to the fasteners on its side
 */
record RollHold(JointFix fix, double pullLb, double breadthIn, double leeIn) implements Calculated {

  /**
   * @param hold what they hold against lift, all together
   */
  static RollHold of(JointFix fix, JointHold hold, double breadthIn) {
    double leeIn =
        switch (fix.way()) {
          case TOE_NAILED, TOE_SCREWED, HOUSED -> Math.min(breadthIn, slant(fix).crossingIn());
          // Steel on both faces: the part on the lee face has no lever.
          case RATED -> 0;
          // Driven from above down the middle.
          case LAGGED, BOLTED -> breadthIn / 2;
        };
    return new RollHold(fix, hold.pullLb(), breadthIn, leeIn);
  }

  private static ToeNail slant(JointFix fix) {
    return new ToeNail(fix.reach().lengthIn());
  }

  private int fewerCount() {
    return fix.count() / 2;
  }

  private double windwardIn() {
    return breadthIn - leeIn;
  }

  /** The moment about the lee edge. */
  double momentInLb() {
    double eachLb = pullLb / fix.count();
    return switch (fix.way()) {
      case TOE_NAILED, TOE_SCREWED, HOUSED ->
          eachLb * (fewerCount() * mostIn() + (fix.count() - fewerCount()) * leastIn());
      case RATED -> eachLb * fewerCount() * breadthIn;
      case LAGGED, BOLTED -> pullLb * breadthIn / 2;
    };
  }

  private double mostIn() {
    return Math.max(leeIn, windwardIn());
  }

  private double leastIn() {
    return Math.min(leeIn, windwardIn());
  }

  @Override
  public List<FormulaLine> lines() {
    FormulaLine held =
        FormulaLine.of("roll-held", Measure.inchPounds(momentInLb()))
            .with("pull-holds", Measure.pounds(pullLb))
            .with("count", Measure.count(fix.count()));
    Measure fewer = Measure.count(fewerCount());
    return switch (fix.way()) {
      case TOE_NAILED, TOE_SCREWED, HOUSED ->
          List.of(
              slant(fix).crossing(),
              FormulaLine.of("windward", Measure.inches(windwardIn()))
                  .with("breadth", Measure.inches(breadthIn))
                  .with("lee", Measure.inches(leeIn)),
              held.with("fewer", fewer)
                  .with("most", Measure.inches(mostIn()))
                  .with("least-lever", Measure.inches(leastIn())));
      case RATED ->
          List.of(
              FormulaLine.of("roll-held-rated", held.result())
                  .with("pull-holds", Measure.pounds(pullLb))
                  .with("count", Measure.count(fix.count()))
                  .with("fewer", fewer)
                  .with("breadth", Measure.inches(breadthIn)));
      case LAGGED, BOLTED ->
          List.of(
              FormulaLine.of("roll-held-middle", held.result())
                  .with("pull-holds", Measure.pounds(pullLb))
                  .with("breadth", Measure.inches(breadthIn)));
    };
  }
}
