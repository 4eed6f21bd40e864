package org.scantling.shop;

import java.util.Optional;
import java.util.OptionalLong;
import org.scantling.tables.ItemKey;

/**
 * A line of the buying list.
 *
 * @param key by which a price list names it
 * @param section timber, fixings, ground, work or climbers
 * @param item what to ask for
 * @param needed what the structure takes
 * @param spare what is bought beyond it
 * @param bought how many units to buy
 * @param unit stick, piece, 5 lb box, 80 lb bag
 * @param use what it is for
 * @param cents what it costs, where the yard's list says
 * @param kind what it must be made of, and hold
 */
public record BuyingLine(
    ItemKey key,
    String section,
    String item,
    Quantity needed,
    Quantity spare,
    int bought,
    String unit,
    String use,
    OptionalLong cents,
    Kind kind) {

  BuyingLine(
      ItemKey key,
      String section,
      String item,
      Quantity needed,
      Quantity spare,
      int bought,
      String unit,
      String use,
      OptionalLong cents) {
    this(key, section, item, needed, spare, bought, unit, use, cents, Kind.ANY);
  }

  /** The same, of that kind. */
  BuyingLine of(Kind asked) {
    return new BuyingLine(key, section, item, needed, spare, bought, unit, use, cents, asked);
  }

  /** The same at that price. */
  BuyingLine costing(OptionalLong priced) {
    return new BuyingLine(key, section, item, needed, spare, bought, unit, use, priced, kind);
  }

  /**
   * @param amount how much, in whatever the unit says
   * @param unit pieces, ft, cu ft
   */
  public record Quantity(double amount, String unit) {}

  /**
   * What the yard must be told beside the size.
   *
   * @param timber species and grade; empty for what is no timber
   * @param treatment use category of timber that is treated for where it stands; else empty
   * @param finish what keeps steel from rust; else empty
   * @param rating what a steel part must be rated for by its maker
   */
  public record Kind(String timber, String treatment, String finish, Optional<Rating> rating) {
    static final Kind ANY = new Kind("", "", "", Optional.empty());

    static Kind wood(String timber, String treatment) {
      return new Kind(timber, treatment, "", Optional.empty());
    }

    static Kind steel(String finish, Optional<Rating> rating) {
      return new Kind("", "", finish, rating);
    }
  }
}
