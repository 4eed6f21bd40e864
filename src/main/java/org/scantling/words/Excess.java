package org.scantling.words;

import java.util.List;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;

/** How far over a limit something is, in words. */
final class Excess {
  private Excess() {}

  /**
   * @param limit what the client calls the limit
   */
  static String say(double ratio, Reader reader, String limit) {
    if (Check.beyondTelling(ratio)) {
      return beyond(ratio >= Check.LEANS_OVER, reader, limit);
    }
    return switch (reader) {
      case CLIENT -> plain(ratio, limit);
      case BUILDER -> percent(ratio);
      case ENGINEER -> "ratio " + MeasureText.imperial(Measure.ratio(ratio));
    };
  }

  /**
   * What has lost its meaning as a number: the post leans over, or nearly everything is missing.
   */
  private static String beyond(boolean leansOver, Reader reader, String limit) {
    return switch (reader) {
      case CLIENT -> "many times " + limit;
      case BUILDER ->
          leansOver
              ? "so far that it leans over under its load: it does not stand up without more"
                  + " bracing"
              : "more than ten times what is allowed";
      case ENGINEER -> leansOver ? "leans over, fc >= FcE" : "ratio over 10";
    };
  }

  private static String percent(double ratio) {
    long over = Math.round((ratio - 1) * 100);
    if (ratio >= 2) {
      return "%.1f times what is allowed".formatted(ratio);
    }
    return over < 1 ? "just over" : over + " % over";
  }

  private static String plain(double ratio, String limit) {
    if (ratio < JUST_PAST) {
      return "a shade past " + limit;
    }
    for (Share share : SHARES) {
      if (ratio < share.belowRatio()) {
        return "about " + share.words() + " past " + limit;
      }
    }
    return ratio < NEARLY_TWICE
        ? "nearly twice " + limit
        : "about " + (ratio < THRICE ? "twice" : Math.round(ratio) + " times") + " " + limit;
  }

  /**
   * @param belowRatio half-way to the next share
   */
  private record Share(double belowRatio, String words) {}

  private static final double JUST_PAST = 1.05;
  private static final double NEARLY_TWICE = 1.95;
  private static final double THRICE = 2.5;
  private static final List<Share> SHARES =
      List.of(
          new Share(1.15, "a tenth"),
          new Share(1.225, "a fifth"),
          new Share(1.29, "a quarter"),
          new Share(1.415, "a third"),
          new Share(1.58, "half"),
          new Share(1.71, "two thirds"),
          new Share(1.85, "three quarters"));
}
