package org.scantling.timber;

import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * How hard a joint's fasteners are worked.
 *
 * @param forceLb the force on the joint, 0 or more
 * @param single what one fastener carries, adjusted
 * @param fastenerCount how many share the force, 1 or more; C_g among the factors of {@code single}
 *     tells how evenly
 */
public record Connection(double forceLb, AdjustedForce single, int fastenerCount) {
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
}
