package org.scantling.print;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Stated;
import org.scantling.words.Voice;

/** How high the way is, at its lowest, with the fall of the ground where the top is stepped. */
final class Headroom {
  private static final String LEVEL = WayOfBuilding.LEVEL;
  private static final double ROUNDED_IN = 1.0 / 8;

  private final Proposal proposal;
  private final Voice voice;

  Headroom(Told told) {
    this.proposal = told.proposal();
    this.voice = told.voice();
  }

  /**
   * What fills the blanks {@code headroom}, {@code needed}, {@code drop}, {@code fall} and {@code
   * top}: the least free height, what is needed where that is less, how much lower one row stands,
   * and how the ground falls along the walk and the top with it where they are not level.
   */
  Map<String, String> blanks(TopLine top) {
    Map<String, String> blanks = new HashMap<>();
    double leastIn = top.headroomIn();
    blanks.put("headroom", voice.say(Measure.inches(leastIn)));
    number(Question.HEADROOM)
        .ifPresent(neededIn -> blanks.putAll(needed(leastIn - neededIn, neededIn)));
    if (top.dropIn() > 0) {
      blanks.put("drop", voice.say(Measure.inches(top.dropIn())));
    }
    line()
        .filter(word -> !word.equals(LEVEL))
        .ifPresent(word -> blanks.putAll(slope(voice.option(Question.TOP_LINE, word))));
    return blanks;
  }

  /** A height that was only rounded up is told as the one it was rounded from. */
  private Map<String, String> needed(double overIn, double neededIn) {
    String needed = voice.say(Measure.inches(neededIn));
    return Map.of(Math.abs(overIn) > ROUNDED_IN ? "needed" : "headroom", needed);
  }

  private Map<String, String> slope(String top) {
    return Map.of("top", top, "fall", voice.say(new Measure(slopePercent(), Demand.SLOPE.unit())));
  }

  private double slopePercent() {
    return proposal.given().stream()
        .filter(each -> each.demand() == Demand.SLOPE)
        .map(Stated::value)
        .mapToDouble(value -> ((Outcome.Amount) value).measure().amount())
        .findFirst()
        .orElse(0);
  }

  private Optional<String> line() {
    return proposal
        .decision(Question.TOP_LINE)
        .map(Decision::proposed)
        .map(outcome -> ((Outcome.Word) outcome).text());
  }

  private Optional<Double> number(Question question) {
    return proposal
        .decision(question)
        .map(Decision::proposed)
        .map(outcome -> ((Outcome.Amount) outcome).measure().amount());
  }
}
