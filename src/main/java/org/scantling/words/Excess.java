package org.scantling.words;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.sayings.Sayings;

/** How far over a limit something is, in words. */
final class Excess {
  private static final Sayings SAYINGS = Sayings.of("voice");

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
      case ENGINEER ->
          SAYINGS.say("over.ratio", "ratio", MeasureText.imperial(Measure.ratio(ratio)));
    };
  }

  /**
   * What has lost its meaning as a number: the post leans over, or nearly everything is missing.
   */
  private static String beyond(boolean leansOver, Reader reader, String limit) {
    return switch (reader) {
      case CLIENT -> SAYINGS.say("over.many-times", "limit", limit);
      case BUILDER -> SAYINGS.say(leansOver ? "over.leans" : "over.ten-times");
      case ENGINEER -> SAYINGS.say(leansOver ? "over.ratio.leans" : "over.ratio.ten");
    };
  }

  private static String percent(double ratio) {
    long over = Math.round((ratio - 1) * 100);
    if (ratio >= 2) {
      return SAYINGS.say("over.times", "times", "%.1f".formatted(ratio));
    }
    return over < 1
        ? SAYINGS.say("over.just")
        : SAYINGS.say("over.percent", "percent", Long.toString(over));
  }

  private static String plain(double ratio, String limit) {
    return share(ratio)
        .map(share -> SAYINGS.say(share.saying(), "limit", limit))
        .orElseGet(
            () ->
                SAYINGS.say("over.n-times", "limit", limit, "n", Long.toString(Math.round(ratio))));
  }

  private static Optional<Share> share(double ratio) {
    return SHARES.stream().filter(share -> ratio < share.belowRatio()).findFirst();
  }

  /**
   * @param belowRatio half-way to the next share
   */
  private record Share(double belowRatio, String saying) {}

  private static final List<Share> SHARES =
      List.of(
          new Share(1.05, "over.shade"),
          new Share(1.15, "over.tenth"),
          new Share(1.225, "over.fifth"),
          new Share(1.29, "over.quarter"),
          new Share(1.415, "over.third"),
          new Share(1.58, "over.half"),
          new Share(1.71, "over.two-thirds"),
          new Share(1.85, "over.three-quarters"),
          new Share(1.95, "over.nearly-twice"),
          new Share(2.5, "over.twice"));
}
