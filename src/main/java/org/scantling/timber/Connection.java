package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard a joint's fasteners are worked.
 *
 * @param forceLb the force on the joint, 0 or more
 * @param single what one fastener carries, adjusted
 * @param fastenerCount how many share the force, 1 or more; C_g among the factors of {@code single}
 *     tells how evenly
 */
public record Connection(double forceLb, AdjustedForce single, int fastenerCount)
    implements Calculated {
  public Connection {
    Require.zeroOrMore("force on the joint", forceLb, "lb");
    if (fastenerCount < 1) {
      throw new IllegalArgumentException(
          "a joint of " + fastenerCount + " fasteners must have 1 or more");
    }
  }

  /** What the whole joint carries in pounds. Worked: two bolts of 480 lb carry 960 lb. */
  public double capacityLb() {
    return fastenerCount * single.lb();
  }

  /** The force against what the joint carries. */
  public Check check() {
    return new Check(forceLb, capacityLb());
  }

  /**
   * Nails or wood screws that are pulled and pushed sideways at once: the sum of both ratios
   * against 1.
   *
   * <p>Source: NDS, 2018, 12.4.2, from memory.
   */
  public static Check together(Connection sideways, Connection pulled) {
    return new Check(sideways.check().ratio() + pulled.check().ratio(), 1);
  }

  /** What one fastener carries, then all of them. */
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(single.lines());
    lines.add(
        FormulaLine.of(
                single.symbol().equals("W") ? "all-pulled" : "all-pushed",
                Measure.pounds(capacityLb()))
            .with("count", Measure.count(fastenerCount))
            .with("one", Measure.pounds(single.lb())));
    return lines;
  }
}
