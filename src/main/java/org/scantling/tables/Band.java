package org.scantling.tables;

/**
 * A stretch of nominal sizes or ratios, both ends included.
 *
 * @param from least value, 0 where there is none
 * @param to greatest value, infinite where there is none
 */
public record Band(double from, double to) {
  public boolean holds(double amount) {
    return amount >= from && amount <= to;
  }
}
