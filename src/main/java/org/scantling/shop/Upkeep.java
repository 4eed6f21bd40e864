package org.scantling.shop;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * What keeps the structure standing, year by year.
 *
 * @param care by the season, in the order of a year
 */
public record Upkeep(List<Care> care) {
  public Upkeep {
    care = List.copyOf(care);
  }

  /**
   * @param season first-year, each-spring, each-winter, after-storm, each-five-years or always-so
   */
  public record Care(String season, String text, Source source) {}
}
