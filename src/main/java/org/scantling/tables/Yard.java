package org.scantling.tables;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

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
   * @param made what it is, where the list tells several of one size apart
   */
  public record Offer(String size, double lengthIn, OptionalLong cents, Made made) {
    /** One that serves any use. */
    public Offer(String size, double lengthIn, OptionalLong cents) {
      this(size, lengthIn, cents, Made.ANY);
    }
  }

  /**
   * What a yard says of a stick beside its size; what it leaves out is free.
   *
   * @param treatment use category that it is treated for, or heartwood
   * @param species species group of the design values
   * @param grade visual grade
   */
  public record Made(Optional<String> treatment, Optional<String> species, Optional<String> grade) {
    public static final Made ANY = new Made(Optional.empty(), Optional.empty(), Optional.empty());

    /** How much of it the list says: what says more is meant where both would serve. */
    int said() {
      return (int) Stream.of(treatment, species, grade).filter(Optional::isPresent).count();
    }
  }

  /** The lengths it sells of a size; empty where it has none. */
  public List<Offer> of(String size) {
    return offers.stream().filter(each -> each.size().equals(size)).toList();
  }
}
