package org.scantling.tables;

import java.util.List;
import java.util.Optional;

/** The markets whose timber the tables have, by the words that files and tables have for them. */
public final class Market {
  public static final String NORTH_AMERICA = "north-america";
  public static final String METRIC = "metric";

  static final List<String> ALL = List.of(NORTH_AMERICA, METRIC);

  private Market() {}

  /** Where timber is bought: as somebody says, else where it usually is. */
  public static String of(Optional<String> said, Tables tables) {
    return said.orElseGet(() -> tables.defaults().row("market").word());
  }

  /** True where timber is sold by the millimeter. */
  public static boolean isMetric(String market) {
    return market.equals(METRIC);
  }
}
