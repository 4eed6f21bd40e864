package org.scantling.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BinaryOperator;

/**
 * The lengths of a size that can be bought: by the yard's list if it has any, else by the stock
 * table. Whatever is said of lengths that are sold, in checks, lists and words, is read here.
 */
public final class Sold {
  /** A metric length written in inches is that much off its millimetre at most. */
  static final double HAIR_IN = 0.002;

  private static final double SIXTY_FOURTHS = 64;

  private final List<Yard.Offer> offers;
  private final boolean listed;

  private Sold(List<Yard.Offer> offers, boolean listed) {
    this.offers = offers;
    this.listed = listed;
  }

  /** Of any kind. */
  public static Sold of(String size, Tables tables, Optional<Yard> yard) {
    return of(size, yard.map(each -> each.of(size)).orElse(List.of()), tables);
  }

  /**
   * For one use: what is treated for another, or is of another species or grade, is not sold for
   * it, though it may be better.
   */
  public static Sold of(String size, TimberUse use, Tables tables, Optional<Yard> yard) {
    List<Yard.Offer> serving =
        yard.map(each -> each.of(size)).orElse(List.of()).stream()
            .filter(offer -> use.served(offer.made(), tables))
            .toList();
    return of(size, serving, tables);
  }

  /** What its market has of it, whatever one yard lists. */
  public static Sold anywhere(String size, Tables tables) {
    List<Yard.Offer> offers = new ArrayList<>();
    for (double lengthIn : tables.stockLengths(tables.size(size)).lengthsIn()) {
      offers.add(new Yard.Offer(size, lengthIn, OptionalLong.empty()));
    }
    return new Sold(offers, false);
  }

  private static Sold of(String size, List<Yard.Offer> serving, Tables tables) {
    List<Yard.Offer> listed = new ArrayList<>(oneOfEachLength(serving));
    if (listed.isEmpty()) {
      return anywhere(size, tables);
    }
    listed.sort(Comparator.comparingDouble(Yard.Offer::lengthIn));
    return new Sold(listed, true);
  }

  /** Of one length the offer whose line says most of it; of equals one with a price, the lowest. */
  private static Collection<Yard.Offer> oneOfEachLength(List<Yard.Offer> serving) {
    Comparator<Yard.Offer> best =
        Comparator.<Yard.Offer>comparingInt(offer -> -offer.made().said())
            .thenComparingLong(offer -> offer.cents().orElse(Long.MAX_VALUE));
    Map<Long, Yard.Offer> byLength = new LinkedHashMap<>();
    for (Yard.Offer offer : serving) {
      byLength.merge(
          Math.round(offer.lengthIn() * SIXTY_FOURTHS), offer, BinaryOperator.minBy(best));
    }
    return byLength.values();
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
    return offers.stream().filter(each -> holds(each.lengthIn(), lengthIn)).findFirst();
  }

  /** Whether a piece of some length comes out of a stick. */
  static boolean holds(double stickIn, double lengthIn) {
    return stickIn >= lengthIn - HAIR_IN;
  }
}
