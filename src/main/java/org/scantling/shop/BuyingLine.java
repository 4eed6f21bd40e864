package org.scantling.shop;

import java.util.OptionalLong;

/**
 * A line of the buying list.
 *
 * @param section timber, fixings, ground or climbers
 * @param item what to ask for
 * @param needed what the structure takes
 * @param spare what is bought beyond it
 * @param bought how many units to buy
 * @param unit stick, piece, 5 lb box, 80 lb bag
 * @param use what it is for
 * @param cents what it costs, where the yard's list says
 * @param treatment use category of timber that is treated for where it stands; else empty
 */
public record BuyingLine(
    String section,
    String item,
    Quantity needed,
    Quantity spare,
    int bought,
    String unit,
    String use,
    OptionalLong cents,
    String treatment) {

  BuyingLine(
      String section,
      String item,
      Quantity needed,
      Quantity spare,
      int bought,
      String unit,
      String use,
      OptionalLong cents) {
    this(section, item, needed, spare, bought, unit, use, cents, "");
  }

  /** The same, treated for that use category. */
  BuyingLine treated(String category) {
    return new BuyingLine(section, item, needed, spare, bought, unit, use, cents, category);
  }

  /**
   * @param amount how much, in whatever the unit says
   * @param unit pieces, ft, cu ft
   */
  public record Quantity(double amount, String unit) {}
}
