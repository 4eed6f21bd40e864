package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Something that a job pays for.
 *
 * @param key by which a price list names it
 * @param part of the job: timber, fixings, ground, work, climbers, plants, labor or around
 * @param what in words
 * @param quantity how many of the unit
 * @param unit what is counted
 * @param price of one of the unit; empty where nobody says it
 */
public record CostLine(
    String key,
    String part,
    String what,
    BigDecimal quantity,
    String unit,
    Optional<BigDecimal> price) {
  private static final int CENTS = 2;

  /** To the cent, a half up. */
  public Optional<BigDecimal> amount() {
    return price.map(each -> cents(each.multiply(quantity)));
  }

  /** What is bought and becomes the buyer's; tax on materials is on it. */
  boolean goods() {
    return !part.equals("labor") && !part.equals("around");
  }

  static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(CENTS, RoundingMode.HALF_UP);
  }
}
