package org.scantling.workings;

import org.scantling.sayings.Sayings;

/** What the blanks of a working's lines are filled with: rules/words/working-labels.csv. */
final class WorkingLabels {
  private WorkingLabels() {}

  /**
   * @param blanks name and filling in turn
   */
  static String say(String name, String... blanks) {
    return Sayings.of("working-labels").say(name, blanks);
  }
}
