package org.scantling.print;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.reasons.TrackRecord;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** How a worked check is told: its name, its numbers, and how the base itself does in it. */
final class CheckLine {
  private static final Sayings SAYINGS = Sayings.of("check-lines");
  private static final double BARE = 1 + 1e-9;
  private static final double TENTHS = 10;

  /** What a tape still shows. */
  private static final double SMALLEST_IN = 1.0 / 16;

  private final Voice voice;
  private final CheckLimits checkLimits;

  CheckLine(Voice voice, CheckLimits checkLimits) {
    this.voice = voice;
    this.checkLimits = checkLimits;
  }

  /** The member and what is checked of it. */
  String name(Checked checked) {
    return SAYINGS.say("name", "member", checked.role(), "check", voice.check(checked.id()));
  }

  /** How much of what there is it uses. */
  String used(Checked checked) {
    double ratio = checked.check().ratio();
    return Check.beyondTelling(ratio)
        ? SAYINGS.say("used.beyond")
        : voice.say(Measure.ratio(ratio));
  }

  /** True where the check is so far past its limit that its numbers mean nothing. */
  boolean pointless(Checked checked) {
    return Check.beyondTelling(checked.check().ratio());
  }

  /** True where the numbers say no more than the ratio does. */
  boolean bare(Checked checked) {
    return checked.unit() == Unit.RATIO && checked.check().capacity() < BARE;
  }

  /** What is asked, or empty where it says no more than the ratio does. */
  String asked(Checked checked) {
    return bare(checked) || pointless(checked) ? "" : amounts(checked).get(0);
  }

  /** What is there, or empty where it says no more than the ratio does. */
  String there(Checked checked) {
    return bare(checked) || pointless(checked) ? "" : amounts(checked).get(1);
  }

  private List<String> amounts(Checked checked) {
    List<String> both = List.of(amount(checked.demand()), amount(checked.capacity()));
    boolean alike = both.get(0).equals(both.get(1)) || checked.check().ratio() > 1;
    return alike && checked.unit() != Unit.RATIO
        ? voice.apart(checked.demand(), checked.capacity())
        : both;
  }

  /** A slenderness is a number, not a share; a sag may be less than a tape shows. */
  private String amount(Measure measure) {
    if (measure.unit() == Unit.RATIO) {
      return voice.say(Measure.count(Math.round(measure.amount() * TENTHS) / TENTHS));
    }
    boolean small = measure.unit() == Unit.INCH && measure.amount() < SMALLEST_IN / 2;
    return small && measure.amount() > 0
        ? SAYINGS.say("under", "amount", voice.say(Measure.inches(SMALLEST_IN)))
        : voice.say(measure);
  }

  /** How much of it the base itself uses, or empty where that is not known. */
  String base(Checked checked) {
    OptionalDouble ratio = checkLimits.baseRatio(checked);
    return ratio.isPresent() ? voice.say(Measure.ratio(ratio.getAsDouble())) : "";
  }

  /**
   * The same for a sentence about the check here: what fills the blanks {@code base} and {@code
   * since}, or nothing.
   */
  Map<String, String> beside(Checked checked) {
    String base = base(checked);
    return base.isEmpty()
        ? Map.of()
        : Map.of(
            "base",
            base,
            "since",
            Integer.toString(checkLimits.record().map(TrackRecord::sinceYear).orElseThrow()));
  }

  /** How far over its limit it is. */
  String over(Checked checked) {
    return voice.over(checked.check().ratio() / checkLimits.limitRatio(checked));
  }

  /** The whole of a check that fails, after its member. */
  String failing(Checked checked) {
    Map<String, String> blanks = new HashMap<>(beside(checked));
    blanks.putAll(both(checked));
    blanks.put("check", voice.check(checked.id()));
    blanks.put("over", over(checked));
    blanks.put("combination", voice.combination(checked.combination()));
    blanks.put("source", voice.source(checked.source()));
    return SAYINGS.say("failing", blanks);
  }

  /** Nothing where no tape tells two lengths apart. */
  private Map<String, String> both(Checked checked) {
    if (pointless(checked)) {
      return Map.of();
    }
    if (bare(checked)) {
      return Map.of("used", used(checked));
    }
    if (asked(checked).equals(there(checked))) {
      return Map.of();
    }
    return movement(checked)
        ? Map.of("moves", asked(checked), "allowed", there(checked))
        : Map.of("needed", asked(checked), "there", there(checked));
  }

  /** A sag or a sway is not needed but allowed. */
  private boolean movement(Checked checked) {
    return checked.unit() == Unit.INCH && voice.movement(checked.id());
  }
}
