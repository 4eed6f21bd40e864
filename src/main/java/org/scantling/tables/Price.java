package org.scantling.tables;

import java.math.BigDecimal;

/**
 * A line of a price list.
 *
 * @param line its number in the file
 * @param item what is priced
 * @param unit what the price is for one of
 * @param amount money, or percent where the unit is percent
 */
public record Price(int line, ItemKey item, String unit, BigDecimal amount) {
  /** How much it says of the stick: what says more is meant where two serve. */
  int said() {
    return item.made().said();
  }
}
