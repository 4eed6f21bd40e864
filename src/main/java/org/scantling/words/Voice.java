package org.scantling.words;

import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.tables.SizeRow;

/** How things are said to one reader, in one system of units. */
public final class Voice {
  /** Beyond it a ratio is no share of anything, but a slenderness. */
  private static final double GREATEST_SHARE = 5;

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
    return switch (reader) {
      case CLIENT -> new ClientNumbers(units).say(measure);
      case ENGINEER -> new EngineerNumbers(units).say(measure);
      case BUILDER ->
          measure.unit() == Unit.RATIO
              ? ratio(measure.amount())
              : MeasureText.print(measure, units);
    };
  }

  /** The answer to a question. */
  public String say(Question question, Outcome outcome) {
    if (outcome instanceof Outcome.Amount amount) {
      Measure measure = amount.measure();
      boolean nothing = measure.unit() == Unit.INCH && !(measure.amount() > 0);
      return nothing && reader != Reader.ENGINEER ? "none" : say(measure);
    }
    return option(question, ((Outcome.Word) outcome).text());
  }

  /** An option of a question. */
  public String option(Question question, String option) {
    return word(question.id(), option);
  }

  /** A word that the site file may state for a demand. */
  public String option(Demand demand, String option) {
    return words
        .subjects()
        .at(demand.path())
        .map(row -> option(row.question(), option))
        .orElseGet(() -> word(demand.path(), option));
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
    String said =
        words
            .wording()
            .template(reason.note().id(), reader)
            .filled(new Blanks(this, reason, decision)::fill);
    return reader == Reader.ENGINEER ? said : capital(said);
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

  /**
   * What is taken where the file leaves a path out that no question answers, if a word is needed.
   */
  public Optional<String> absent(String path) {
    return words.options().find("absent", path, reader);
  }

  /** True for an answer so plain that it is not worth a word where the base does not say it. */
  public boolean plain(Decision decision) {
    return decision.proposed() instanceof Outcome.Word word
        && words
            .options()
            .find("plain", decision.question().id(), Reader.BUILDER)
            .filter(word.text()::equals)
            .isPresent();
  }

  /** How a changed answer is told as a cause. */
  public String driver(Decision decision) {
    SubjectRow row = words.subjects().row(decision.question());
    String now = say(decision.question(), decision.proposed());
    String then = decision.base().map(base -> say(decision.question(), base)).orElse("none");
    String change =
        reader == Reader.CLIENT
            ? row.phrase().of(now) + " instead of " + then
            : row.builder() + " " + now + ", was " + then;
    return change + remark(row);
  }

  /** The name of a changed answer that is a cause, with what explains it. */
  public String cause(Decision decision) {
    return label(decision.question()) + remark(words.subjects().row(decision.question()));
  }

  private static String remark(SubjectRow row) {
    return row.remark().isEmpty() ? "" : " (" + row.remark() + ")";
  }

  /** The answer with what its name hides: a nominal size with its dressed dimensions. */
  public String detailed(Question question, Outcome outcome) {
    String said = say(question, outcome);
    return outcome instanceof Outcome.Word word
        ? words.options().dressed(word.text()).map(this::dimensions).map(said::concat).orElse(said)
        : said;
  }

  /** The same as a noun phrase for the client. */
  public String described(Question question, Outcome outcome) {
    String said = detailed(question, outcome);
    return reader == Reader.CLIENT ? words.subjects().row(question).phrase().of(said) : said;
  }

  /** A path, a table row or a check, with its number where it has one. */
  public String reference(String reference) {
    return words
        .numbers(reference)
        .map(row -> reference + " = " + say(row.measure()) + ": " + row.statement())
        .or(
            () ->
                words
                    .tables()
                    .checks()
                    .find(reference)
                    .map(row -> reference + ": " + tail(row.builderWords())))
        .or(
            () ->
                words
                    .tables()
                    .defaults()
                    .find(reference)
                    .map(row -> reference + " by default: " + row.statement()))
        .orElse(reference);
  }

  private String dimensions(SizeRow size) {
    String breadth = say(Measure.inches(size.thicknessIn()));
    String depth = say(Measure.inches(size.widthIn()));
    return " (" + (breadth.equals(depth) ? depth + " square" : breadth + " by " + depth) + ")";
  }

  String word(String kind, String option) {
    return words.options().say(kind, option, reader);
  }

  private static String capital(String said) {
    return said.isEmpty() ? said : Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  /** A share as percent, a slenderness as it is. */
  private static String ratio(double ratio) {
    return ratio < GREATEST_SHARE
        ? Math.round(ratio * 100) + " %"
        : MeasureText.imperial(Measure.count(Math.round(ratio * 10) / 10.0));
  }

  /** The member is named by the sentence already. */
  private static String tail(String builderWords) {
    return builderWords.substring(
        builderWords.indexOf(": ") < 0 ? 0 : builderWords.indexOf(": ") + 2);
  }
}
