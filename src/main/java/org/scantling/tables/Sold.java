package org.scantling.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The lengths of a size that can be bought: by the yard's list if it has any, else by the stock
 * table. Whatever is said of lengths that are sold, in checks, lists and words, is read here.
 */
public final class Sold {
  /** A metric length written in inches is that much off its millimetre at most. */
  private static final double HAIR_IN = 0.002;

  private final List<Yard.Offer> offers;
  private final boolean listed;

  private Sold(List<Yard.Offer> offers, boolean listed) {
    this.offers = offers;
    this.listed = listed;
  }

  public static Sold of(String size, Tables tables, Optional<Yard> yard) {
    List<Yard.Offer> listed = new ArrayList<>(yard.map(each -> each.of(size)).orElse(List.of()));
    boolean byTheYard = !listed.isEmpty();
    if (!byTheYard) {
      for (double lengthIn : tables.stockLengths(tables.size(size)).lengthsIn()) {
        listed.add(new Yard.Offer(size, lengthIn, OptionalLong.empty()));
      }
    }
    listed.sort(Comparator.comparingDouble(Yard.Offer::lengthIn));
    return new Sold(listed, byTheYard);
  }

  /** Shortest first. */
  public List<Yard.Offer> offers() {
    return offers;
  }

  /** The lengths alone, shortest first. */
  public List<Double> lengthsIn() {
    return offers.stream().map(Yard.Offer::lengthIn).toList();
  }

  /** True where one yard's list says so, false where it is what the market has. */
  public boolean byTheYard() {
    return listed;
  }

  public boolean priced() {
    return offers.stream().allMatch(each -> each.cents().isPresent());
  }

  public double longestIn() {
    return offers.get(offers.size() - 1).lengthIn();
  }

  /** The shortest that holds a length; empty where none does. */
  public Optional<Yard.Offer> holding(double lengthIn) {
    return offers.stream().filter(each -> each.lengthIn() >= lengthIn - HAIR_IN).findFirst();
  }
}
