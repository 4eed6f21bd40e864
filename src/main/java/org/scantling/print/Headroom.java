package org.scantling.print;

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

  /** The least free height, and what is needed where that is less. */
  String said(TopLine top) {
    double leastIn = top.headroomIn();
    String least = voice.say(Measure.inches(leastIn));
    return number(Question.HEADROOM)
        .map(neededIn -> said(least, leastIn - neededIn, voice.say(Measure.inches(neededIn))))
        .orElse(least);
  }

  /** A height that was only rounded up is told as the one it was rounded from. */
  private static String said(String least, double overIn, String needed) {
    return Math.abs(overIn) > ROUNDED_IN ? least + " (" + needed + " needed)" : needed;
  }

  /** How the ground falls and the top with it; nothing where both are level. */
  String slope() {
    String fall = voice.say(new Measure(slopePercent(), Demand.SLOPE.unit()));
    return line()
        .filter(word -> !word.equals(LEVEL))
        .map(word -> voice.option(Question.TOP_LINE, word))
        .map(top -> ", on ground that falls " + fall + " along the walk, the top " + top)
        .orElse("");
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
