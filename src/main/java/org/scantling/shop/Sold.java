package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** The lengths of a size that can be bought: by the yard's list, else by the stock table. */
final class Sold {
  /** A metric length written in inches is that much off its millimetre at most. */
  private static final double HAIR_IN = 0.002;

  private final List<Yard.Offer> offers;

  private Sold(List<Yard.Offer> offers) {
    this.offers = offers;
  }

  static Sold of(String size, Tables tables, Optional<Yard> yard) {
    List<Yard.Offer> listed = new ArrayList<>(yard.map(each -> each.of(size)).orElse(List.of()));
    if (listed.isEmpty()) {
      for (double lengthIn : tables.stockLengths(tables.size(size)).lengthsIn()) {
        listed.add(new Yard.Offer(size, lengthIn, OptionalLong.empty()));
      }
    }
    listed.sort(Comparator.comparingDouble(Yard.Offer::lengthIn));
    return new Sold(listed);
  }

  /** Shortest first. */
  List<Yard.Offer> offers() {
    return offers;
  }

  boolean priced() {
    return offers.stream().allMatch(each -> each.cents().isPresent());
  }

  double longestIn() {
    return offers.get(offers.size() - 1).lengthIn();
  }

  /** The shortest that holds a length; empty where none does. */
  Optional<Yard.Offer> holding(double lengthIn) {
    return offers.stream().filter(each -> each.lengthIn() >= lengthIn - HAIR_IN).findFirst();
  }
}
