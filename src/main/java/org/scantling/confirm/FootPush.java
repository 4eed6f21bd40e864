package org.scantling.confirm;

import java.util.List;
import java.util.Optional;
import org.scantling.ground.LateralLoad;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * A sideways push on one foot, allowable-stress level.
 *
 * @param load how hard and how high
 * @param wind what it is of; none where frames were solved for it
 */
public record FootPush(LateralLoad load, Optional<Wind> wind) implements Calculated {
  /**
   * @param way across the walk or along it
   * @param factor of the combination
   * @param push strength level
   */
  public record Wind(Way way, double factor, SidePush push) {}

  /** Which way the wind blows. */
  public enum Way {
    ACROSS("across"),
    ALONG("along");

    private final String word;

    Way(String word) {
      this.word = word;
    }

    /** Its word in explanations. */
    public String word() {
      return word;
    }
  }

  static FootPush of(Way way, SidePush push) {
    double factor = LoadCombination.UPLIFT.factor(LoadKind.WIND);
    LateralLoad load = new LateralLoad(factor * push.forceLb(), push.resultantIn());
    return new FootPush(load, Optional.of(new Wind(way, factor, push)));
  }

  static FootPush solved(double forceLb, double heightIn) {
    return new FootPush(new LateralLoad(forceLb, heightIn), Optional.empty());
  }

  @Override
  public List<FormulaLine> lines() {
    return wind.map(this::lines).orElse(List.of());
  }

  private List<FormulaLine> lines(Wind wind) {
    Measure top = Measure.pounds(wind.push().topLb());
    Measure spread = Measure.pounds(wind.push().spreadLb());
    Measure moment = new Measure(wind.push().momentAtInLb(0), Unit.INCH_POUND);
    return List.of(
        FormulaLine.of("push", Measure.pounds(load.forceLb()))
            .with("top", top)
            .with("spread", spread)
            .with("factor", Measure.ratio(wind.factor())),
        FormulaLine.of("height", Measure.feet(load.heightIn()))
            .with("top", top)
            .with("spread", spread)
            .with("moment", moment));
  }
}
