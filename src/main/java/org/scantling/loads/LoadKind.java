package org.scantling.loads;

/** The loads that are told apart, from the longest lasting to the shortest. */
public enum LoadKind {
  /** Own weight of the timber. */
  DEAD("D"),
  /** Vines, a permanent load that is left out where it would help. */
  VINES("V"),
  /** Snow. */
  SNOW("S"),
  /** Roof live load: people at work on or under the top. */
  ROOF_LIVE("Lr"),
  /** Wind at strength level. */
  WIND("W");

  private final String symbol;

  LoadKind(String symbol) {
    this.symbol = symbol;
  }

  /** Symbol as it stands in a combination. */
  public String symbol() {
    return symbol;
  }
}
