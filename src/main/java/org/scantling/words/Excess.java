package org.scantling.words;

import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;

/** How far over a limit something is, in words. */
final class Excess {
  private Excess() {}

  static String say(double ratio, Reader reader) {
    return switch (reader) {
      case CLIENT -> plain(ratio);
      case BUILDER -> percent(ratio);
      case ENGINEER -> "ratio " + MeasureText.imperial(Measure.ratio(ratio));
    };
  }

  private static String percent(double ratio) {
    long over = Math.round((ratio - 1) * 100);
    if (ratio >= 2) {
      return "%.1f times what is allowed".formatted(ratio);
    }
    return over < 1 ? "just over" : over + " % over";
  }

  private static String plain(double ratio) {
    if (ratio < 1.05) {
      return "a shade past the safe limit";
    }
    if (ratio < 1.35) {
      return "about " + Math.round((ratio - 1) * 20) * 5 + " % past the safe limit";
    }
    if (ratio < 1.6) {
      return "about half as much again as the safe limit";
    }
    if (ratio < 1.85) {
      return "about three quarters past the safe limit";
    }
    return ratio < 2.5
        ? "about twice the safe limit"
        : "about " + Math.round(ratio) + " times the safe limit";
  }
}
