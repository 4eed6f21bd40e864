package org.scantling.tables;

import java.util.List;

/** The markets whose timber the tables have, by the words that files and tables have for them. */
public final class Market {
  public static final String NORTH_AMERICA = "north-america";
  public static final String METRIC = "metric";

  static final List<String> ALL = List.of(NORTH_AMERICA, METRIC);

  private Market() {}

  /** True where timber is sold by the millimeter. */
  public static boolean isMetric(String market) {
    return market.equals(METRIC);
  }
}
