package org.scantling.words;

import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/** How things are said to one reader, in one system of units. */
public final class Voice {
  private final Words words;
  private final Reader reader;
  private final UnitSystem units;

  Voice(Words words, Reader reader, UnitSystem units) {
    this.words = words;
    this.reader = reader;
    this.units = units;
  }

  public Reader reader() {
    return reader;
  }

  /** The name of a question. */
  public String label(Question question) {
    return words.subjects().row(question).label(reader);
  }

  /** A number with its unit. */
  public String say(Measure measure) {
    if (reader == Reader.CLIENT) {
      return new ClientNumbers(units).say(measure);
    }
    if (measure.unit() == Unit.RATIO && reader == Reader.BUILDER) {
      return percent(measure.amount());
    }
    return MeasureText.print(measure, units);
  }

  /** The answer to a question. */
  public String say(Question question, Outcome outcome) {
    if (outcome instanceof Outcome.Amount amount) {
      return say(amount.measure());
    }
    return option(question, ((Outcome.Word) outcome).text());
  }

  /** An option of a question. */
  public String option(Question question, String option) {
    return word(question.id(), option);
  }

  /** The sentence of a finding inside a decision. */
  public String sentence(Reason reason, Decision decision) {
    return sentence(reason, Optional.of(decision));
  }

  /** The sentence of a finding that belongs to no decision. */
  public String sentence(Reason reason) {
    return sentence(reason, Optional.empty());
  }

  private String sentence(Reason reason, Optional<Decision> decision) {
    return words
        .wording()
        .template(reason.note().id(), reader)
        .filled(new Blanks(this, reason, decision)::fill);
  }

  /** What a check or a table row is called. */
  public String check(String id) {
    if (reader == Reader.ENGINEER) {
      return id;
    }
    return words
        .tables()
        .checks()
        .find(id)
        .map(row -> reader == Reader.CLIENT ? row.clientWords() : tail(row.builderWords()))
        .orElseGet(() -> words.tables().thumbs().find(id).map(row -> row.statement()).orElse(id));
  }

  /** Where a number comes from. */
  public String source(Source source) {
    String doubt = source.fromMemory() ? ", from memory" : "";
    return source.kind() == SourceKind.COMMON_PRACTICE
        ? "common practice" + doubt
        : source.citation() + doubt;
  }

  /** How far over its limit something is. */
  public String over(double ratio) {
    return Excess.say(ratio, reader);
  }

  /** The loads that act together, or their symbols for the engineer. */
  public String combination(String combination) {
    return reader == Reader.ENGINEER
        ? combination
        : words.options().combination(combination, reader);
  }

  /** How a site-file path is called: the question it answers, or its last part. */
  public String path(String path) {
    return words
        .subjects()
        .at(path)
        .map(row -> row.label(reader))
        .orElseGet(() -> path.substring(path.lastIndexOf('.') + 1).replace('-', ' '));
  }

  String word(String kind, String option) {
    return words.options().say(kind, option, reader);
  }

  private static String percent(double ratio) {
    return Math.round(ratio * 100) + " %";
  }

  /** The member is named by the sentence already. */
  private static String tail(String builderWords) {
    return builderWords.substring(
        builderWords.indexOf(": ") < 0 ? 0 : builderWords.indexOf(": ") + 2);
  }
}
