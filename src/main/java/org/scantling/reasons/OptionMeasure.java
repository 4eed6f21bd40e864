package org.scantling.reasons;

import java.util.Locale;

/** By what whole structures are told apart that could all be built. */
public enum OptionMeasure {
  /** In the money of the list of prices. */
  COST(true),
  /** Cubic feet in the finished pieces. */
  TIMBER(true),
  /** Posts, each with its hole. */
  HOLES(true),
  /** All hands together. */
  HOURS(true),
  /** Pounds of the heaviest piece. */
  LIFT(true),
  /** Cubic feet that are dug. */
  SOIL(true),
  /** 1 where every proportion is that of the base. */
  LOOK(false),
  /** The share of its limit that the hardest check uses. */
  SPARE(true),
  /** Inches of headroom and width that are given up. */
  CONCEDED(true),
  /** 1 where the timber is another than the site file has it: no list tells what that costs. */
  OTHER_TIMBER(true);

  private final boolean lessIsBetter;

  OptionMeasure(boolean lessIsBetter) {
    this.lessIsBetter = lessIsBetter;
  }

  /** The id of its row, and of the words about it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Above 0 where the first is the better one, below where the second is. */
  public int better(long one, long other) {
    return lessIsBetter ? Long.compare(other, one) : Long.compare(one, other);
  }

  /**
   * @throws IllegalArgumentException when none has that id
   */
  public static OptionMeasure of(String id) {
    return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
