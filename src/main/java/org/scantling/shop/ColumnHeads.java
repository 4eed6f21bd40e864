package org.scantling.shop;

import java.util.List;
import java.util.stream.Stream;
import org.scantling.sayings.Sayings;

/** The first row of a grid. */
final class ColumnHeads {
  private ColumnHeads() {}

  /**
   * @param sayings of the page, with a row for each column
   */
  static List<String> of(Sayings sayings, String... columns) {
    return Stream.of(columns).map(each -> sayings.say("column." + each)).toList();
  }
}
