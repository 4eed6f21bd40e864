package org.scantling.words;

import org.scantling.quantity.InchText;
import org.scantling.quantity.RatingText;

/** The inches, pounds and pound-feet of a text that a table holds as it stands, in metric units. */
final class MetricText {
  private MetricText() {}

  static String of(String text) {
    return RatingText.metric(InchText.replaced(text, size -> size.millimetres() + " mm"));
  }
}
