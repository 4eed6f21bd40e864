package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Threshold;
import org.scantling.tables.DemandRow;
import org.scantling.words.ChangeWords;
import org.scantling.words.ValuePhrase;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What a site may ask, with the values of a search: {@code a way 6 ft wide}. */
final class DemandWords {
  private final Words words;
  private final Voice voice;

  DemandWords(Words words, Voice voice) {
    this.words = words;
    this.voice = voice;
  }

  /** A value alone. */
  String value(Demand demand, Outcome value) {
    return value instanceof Outcome.Word word
        ? voice.option(demand, word.text())
        : voice.say(((Outcome.Amount) value).measure());
  }

  /** The demand with a value. */
  String phrase(Demand demand, Outcome value) {
    return phrase(demand, value(demand, value));
  }

  /** The demand with a value that is told already. */
  String phrase(Demand demand, String value) {
    DemandRow row = words.tables().demands().row(demand.path());
    return ValuePhrase.said(row.words(), value);
  }

  /** The demand with a value, or the words of its own that a value has: no climber at all. */
  String with(Demand demand, Outcome value) {
    return own(demand, value).orElseGet(() -> phrase(demand, value));
  }

  /** The values past some points, without their demand. */
  String either(List<Threshold> points) {
    return Sentence.either(
        points.stream().map(point -> value(point.demand(), point.beyond())).toList());
  }

  /** The demand with any of these values; what has words of its own comes last. */
  String anyOf(List<Threshold> points) {
    Demand demand = points.get(0).demand();
    List<Threshold> plain =
        points.stream().filter(point -> own(demand, point.beyond()).isEmpty()).toList();
    List<String> parts = new ArrayList<>();
    if (!plain.isEmpty()) {
      parts.add(phrase(demand, either(plain)));
    }
    points.forEach(point -> own(demand, point.beyond()).ifPresent(parts::add));
    return Sentence.either(parts);
  }

  private Optional<String> own(Demand demand, Outcome value) {
    return ChangeWords.of(voice).without(demand, value);
  }
}
