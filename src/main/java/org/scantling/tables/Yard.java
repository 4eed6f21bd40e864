package org.scantling.tables;

import java.util.List;
import java.util.OptionalLong;

/**
 * What a yard sells, as its own list says it.
 *
 * @param name the file it was read from
 * @param offers in the order of the file
 */
public record Yard(String name, List<Offer> offers) {
  public Yard {
    offers = List.copyOf(offers);
  }

  /**
   * One length of one size.
   *
   * @param size name of the size, as the sizes table has it
   * @param lengthIn as sold
   * @param cents what one costs, in hundredths of the yard's money, where the list says
   */
  public record Offer(String size, double lengthIn, OptionalLong cents) {}

  /** The lengths it sells of a size; empty where it has none. */
  public List<Offer> of(String size) {
    return offers.stream().filter(each -> each.size().equals(size)).toList();
  }
}
