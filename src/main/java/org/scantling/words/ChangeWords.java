package org.scantling.words;

import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;

/** What a site asks for, asked otherwise, as one reader is told it. */
public final class ChangeWords {
  private final Voice voice;
  private final References references;

  private ChangeWords(Voice voice, References references) {
    this.voice = voice;
    this.references = references;
  }

  public static ChangeWords of(Voice voice) {
    return new ChangeWords(voice, voice.references());
  }

  /** The new value as a noun phrase: {@code a way 6 ft wide}. */
  public String value(Change change) {
    return value(change.demand(), change.to());
  }

  /** Any value of a demand as such a phrase. */
  public String value(Demand demand, Outcome value) {
    Map<String, String> blanks = Map.of("to", plain(demand, value));
    String phrase = "value." + demand.path();
    return value instanceof Outcome.Word word
        ? voice
            .find(phrase + "." + word.text(), blanks)
            .orElseGet(() -> voice.phrase(phrase, blanks))
        : voice.phrase(phrase, blanks);
  }

  /** A word that asks for nothing, with its preposition: {@code with no climber}. */
  public Optional<String> without(Demand demand, Outcome value) {
    return value instanceof Outcome.Word word
        ? voice.find("without." + demand.path() + "." + word.text(), Map.of())
        : Optional.empty();
  }

  /** All that was tried of a demand. */
  public String range(Demand demand, Outcome least, Outcome most) {
    if (least instanceof Outcome.Word) {
      return voice.phrase("every." + demand.path(), Map.of());
    }
    String span =
        voice.phrase("span", Map.of("least", plain(demand, least), "most", plain(demand, most)));
    return voice.phrase("value." + demand.path(), Map.of("to", span));
  }

  /** The new value beside today's: {@code a way 6 ft wide instead of 7 ft}. */
  public String change(Change change) {
    String value = value(change);
    String from = plain(change.demand(), change.from());
    if (change.from() instanceof Outcome.Amount now && change.to() instanceof Outcome.Amount then) {
      return number(value, from, now.measure(), then.measure());
    }
    Map<String, String> blanks =
        Map.of("value", value, "from", from, "to", plain(change.demand(), change.to()));
    return voice
        .find("change." + change.demand().path(), blanks)
        .orElseGet(() -> voice.phrase("change.word", blanks));
  }

  private String number(String value, String from, Measure now, Measure then) {
    double by = then.amount() - now.amount();
    Measure apart = new Measure(Math.abs(by), now.unit());
    String less = voice.phrase(by < 0 ? "change.less" : "change.more", Map.of());
    return voice.phrase(
        "change.number",
        Map.of("value", value, "from", from, "by", voice.say(apart), "less", less));
  }

  /** What {@code --set} takes, in imperial units. */
  public static String setting(Change change) {
    String value =
        change.to() instanceof Outcome.Word word
            ? word.text()
            : amount(((Outcome.Amount) change.to()).measure());
    return change.setting() + "=" + value;
  }

  private static String amount(Measure measure) {
    double rounded = Math.round(measure.amount() * SIXTEENTHS) / SIXTEENTHS;
    String number =
        rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    return (number + " " + measure.unit().imperialSymbol()).strip();
  }

  private static final double SIXTEENTHS = 16;

  private String plain(Demand demand, Outcome value) {
    return references.value(demand.path(), value);
  }
}
