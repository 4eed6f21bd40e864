package org.scantling.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Stated;
import org.scantling.reasons.TimberRole;
import org.scantling.sayings.Sayings;
import org.scantling.tables.CheckNature;
import org.scantling.tables.CheckRow;

/** How things are said to one reader, in one system of units. */
public final class Voice {
  private static final Sayings SAYINGS = Sayings.of("voice");

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

  UnitSystem units() {
    return units;
  }

  Words words() {
    return words;
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
      case BUILDER -> new BuilderNumbers(units).say(measure);
    };
  }

  /**
   * A number and what it is held against; a builder has them as fine as it takes to tell them
   * apart.
   */
  public List<String> apart(Measure one, Measure other) {
    return reader == Reader.BUILDER && one.unit() != Unit.RATIO
        ? MeasureText.apart(one, other, units)
        : List.of(say(one), say(other));
  }

  /** The answer to a question. */
  public String say(Question question, Outcome outcome) {
    if (outcome instanceof Outcome.Amount amount) {
      Measure measure = amount.measure();
      boolean nothing = measure.unit() == Unit.INCH && !(measure.amount() > 0);
      return nothing && reader != Reader.ENGINEER ? SAYINGS.say("none") : say(measure);
    }
    return option(question, ((Outcome.Word) outcome).text());
  }

  /** The answer as it was decided; of bays that are not alike the shortest and the longest. */
  public String proposed(Decision decision) {
    String said = say(decision.question(), decision.proposed());
    return decision.question() != Question.BAY
        ? said
        : decision
            .governing()
            .finding()
            .evidence()
            .find("shortest")
            .filter(Evidence.Seen.Amount.class::isInstance)
            .map(seen -> say(((Evidence.Seen.Amount) seen).measure()))
            .map(shortest -> range(shortest, said))
            .orElse(said);
  }

  /** From the least to the most, or the one that both are. */
  public String range(String least, String most) {
    return least.equals(most) ? most : SAYINGS.say("range", "from", least, "to", most);
  }

  /** An option of a question. */
  public String option(Question question, String option) {
    boolean species = TimberRole.of(question).filter(it -> it.species() == question).isPresent();
    return word(species ? Question.SPECIES.id() : question.id(), option);
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
    return source.kind() == SourceKind.COMMON_PRACTICE
        ? SAYINGS.say("common-practice")
        : source.text();
  }

  /** How far over its limit something is. */
  public String over(double ratio) {
    return over(ratio, CheckNature.STRENGTH);
  }

  /** How far over the limit of a check something is. */
  String over(double ratio, CheckNature nature) {
    return Excess.say(ratio, reader, word("limit", nature.word()));
  }

  /** True for a distance or a proportion that a standard prescribes: no load is worked out. */
  public boolean prescribed(String check) {
    return nature(check) == CheckNature.PRESCRIBED;
  }

  /** True where a check is about how far something sags or sways. */
  public boolean movement(String check) {
    return nature(check) == CheckNature.STIFFNESS;
  }

  /** What a check keeps from happening; a row of the rules of thumb prescribes. */
  CheckNature nature(String check) {
    return words.tables().checks().find(check).map(CheckRow::nature).orElse(CheckNature.PRESCRIBED);
  }

  /** The loads that act together, or their symbols for the engineer. */
  public String combination(String combination) {
    return reader == Reader.ENGINEER
        ? combination
        : words.options().combination(combination, reader);
  }

  /** How a site-file path is called: the question it answers, or its last part. */
  public String path(String path) {
    return references().path(path);
  }

  /** The members of one role. */
  public String role(String role) {
    return word("role", role);
  }

  /** What the site file states, with its name. */
  public String stated(Stated stated) {
    return references().stated(stated);
  }

  /** A path, a table row or a check, with its number where it has one. */
  public String reference(String reference) {
    return references().of(reference);
  }

  /**
   * A phrase of rules/words/phrases.csv with its blanks filled.
   *
   * @throws IllegalArgumentException when there is no such phrase, or a blank stays empty
   */
  public String phrase(String id, Map<String, String> blanks) {
    return words.phrases().say(id, reader, blanks);
  }

  /** The same; empty where there is no such phrase. */
  Optional<String> find(String id, Map<String, String> blanks) {
    return words.phrases().ids().contains(id) ? Optional.of(phrase(id, blanks)) : Optional.empty();
  }

  References references() {
    return new References(words, this);
  }

  String word(String kind, String option) {
    return metric(words.options().say(kind, option, reader));
  }

  /** A fixed text, with its inches and pounds as metric readers want them. */
  String metric(String text) {
    return units == UnitSystem.METRIC ? MetricText.of(text) : text;
  }

  private static String capital(String said) {
    return said.isEmpty() ? said : Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  /** The member is named by the sentence already. */
  static String tail(String builderWords) {
    return builderWords.substring(
        builderWords.indexOf(": ") < 0 ? 0 : builderWords.indexOf(": ") + 2);
  }
}
