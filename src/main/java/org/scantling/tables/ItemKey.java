package org.scantling.tables;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The name by which something that is bought is priced.
 *
 * @param item a size and a length ({@code 4x4x10}), a fastener, or a word for what else is bought
 * @param made of timber what it is treated for, its species and its grade
 */
public record ItemKey(String item, Yard.Made made) {
  private static final String METRIC = "metric";
  private static final double FOOT_IN = 12;
  private static final double MILLIMETRES = 25.4;

  /** What has a name of its own. */
  public static ItemKey of(PricedItem item) {
    return of(item.word());
  }

  /** What is no timber. */
  public static ItemKey of(String item) {
    return new ItemKey(item, Yard.Made.ANY);
  }

  /** A stick: its length in whole feet, in inches where it is none, in millimetres if metric. */
  public static ItemKey stick(SizeRow size, double lengthIn, Yard.Made made) {
    return new ItemKey(size.id() + "x" + length(size, lengthIn), made);
  }

  private static String length(SizeRow size, double lengthIn) {
    if (size.market().equals(METRIC)) {
      return Long.toString(Math.round(lengthIn * MILLIMETRES));
    }
    String inches = plain(lengthIn);
    return lengthIn % FOOT_IN == 0 ? plain(lengthIn / FOOT_IN) : inches + "in";
  }

  private static String plain(double amount) {
    BigDecimal thousandths = BigDecimal.valueOf(amount).setScale(3, RoundingMode.HALF_UP);
    return thousandths.stripTrailingZeros().toPlainString();
  }

  /** True where a price of this is one of that: what it does not say of it is free. */
  boolean serves(ItemKey bought) {
    return item.equals(bought.item())
        && served(made.treatment(), bought.made().treatment())
        && served(made.species(), bought.made().species())
        && served(made.grade(), bought.made().grade());
  }

  private static boolean served(Optional<String> asked, Optional<String> has) {
    return asked.isEmpty() || asked.equals(has);
  }

  /** True where one stick could be both. */
  boolean meets(ItemKey other) {
    return item.equals(other.item())
        && met(made.treatment(), other.made().treatment())
        && met(made.species(), other.made().species())
        && met(made.grade(), other.made().grade());
  }

  private static boolean met(Optional<String> one, Optional<String> other) {
    return one.isEmpty() || other.isEmpty() || one.equals(other);
  }

  /** As a price list has it: {@code 6x6x14 UC4B southern-pine No.2}. */
  public String text() {
    return Stream.concat(
            Stream.of(item),
            Stream.of(made.treatment(), made.species(), made.grade()).flatMap(Optional::stream))
        .collect(Collectors.joining(" "));
  }
}
