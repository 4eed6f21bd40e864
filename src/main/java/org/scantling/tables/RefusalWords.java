package org.scantling.tables;

import org.scantling.sayings.Sayings;

/** What is said of tables and yard lists that cannot be used: rules/words/table-problems.csv. */
final class RefusalWords {
  private RefusalWords() {}

  /** A sentence with its blanks filled, name and filling in turn; read when it is first needed. */
  static String say(String name, String... blanks) {
    return Sayings.of("table-problems").say(name, blanks);
  }
}
