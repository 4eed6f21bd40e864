package org.scantling.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.design.Structure;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
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
import org.scantling.sayings.Template;
import org.scantling.tables.CalculationRow;
import org.scantling.tables.CheckNature;
import org.scantling.tables.CheckRow;
import org.scantling.tables.JointRow;
import org.scantling.tables.PostBed;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Sold;
import org.scantling.tables.SymbolRow;
import org.scantling.tables.TimberUse;

/** How things are said to one reader, in one system of units. */
public final class Voice {
  private static final Sayings SAYINGS = Sayings.of("voice");

  /** Beyond it a ratio is no share of anything, but a slenderness. */
  private static final double GREATEST_SHARE = 5;

  /** Stands for a number where only symbols are looked for. */
  private static final String NUMBER = "#";

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

  /**
   * What is taken where the file leaves a path out that no question answers, if a word is needed.
   */
  public Optional<String> absent(String path) {
    return words
        .options()
        .find("absent", path, reader)
        .or(() -> new ReadAs(words.tables(), reader).say(path))
        .map(this::metric);
  }

  /** The members of one role. */
  public String role(String role) {
    return word("role", role);
  }

  /** What holds a joint together, in full, with the number of joints and of their fasteners. */
  public String fastened(String option, int joints) {
    JointRow row = words.tables().joints().row(option);
    return SAYINGS.say(
        "fastened",
        "fasteners",
        metric(row.fasteners()),
        "joints",
        Integer.toString(joints),
        "all",
        Integer.toString(joints * row.count()));
  }

  /** The longest piece of a size that can be bought for a use: of this yard, or of any. */
  public Measure longest(String size, TimberUse use) {
    return Measure.inches(words.sold(size, use).longestIn());
  }

  /** The longest piece of a size that its market sells, whatever this yard has. */
  public Measure longestAnywhere(String size) {
    return Measure.inches(Sold.anywhere(size, words.tables()).longestIn());
  }

  /** That nothing longer is sold. */
  public String noneLonger(String size, TimberUse use) {
    return words.sold(size, use).byTheYard()
        ? SAYINGS.say("longest.here", "size", size, "longest", say(longest(size, use)))
        : noneLongerAnywhere(size);
  }

  /** That nothing longer is to be had. */
  public String noneLongerAnywhere(String size) {
    return SAYINGS.say("longest", "size", size, "longest", say(longestAnywhere(size)));
  }

  /** What is dug below a post for gravel, and for the pad on it where there is one. */
  public Measure bed(Structure.Footings footings) {
    return Measure.inches(PostBed.of(this::allowanceIn, footings.padded()).depthIn());
  }

  /** As the lists have it. */
  private double allowanceIn(String row) {
    double inches = words.tables().shop(row).amount();
    return units == UnitSystem.METRIC ? Length.handyMetric(inches) : inches;
  }

  /** Whether a step of working belongs to a member or a question. */
  public boolean works(CalculationStep step, String role) {
    boolean others =
        step.evidence().find("member").filter(member -> !word(member).equals(role)).isPresent();
    return !others && words.tables().workings().row(step.id()).roles().contains(role);
  }

  private static String word(Evidence.Seen seen) {
    return ((Evidence.Seen.Word) seen).text();
  }

  /** The heading under which a step of working stands. */
  public String part(CalculationStep step) {
    return template(words.tables().workings().row(step.id()).part(), step);
  }

  /** What a step of working is about. */
  public String worked(CalculationStep step) {
    return template(words.tables().workings().row(step.id()).statement(), step);
  }

  /** A step of working in symbols, then in numbers. */
  public String formula(CalculationStep step) {
    CalculationRow row = words.tables().workings().row(step.id());
    boolean own = units == UnitSystem.METRIC && !row.metric().isEmpty();
    return template(own ? row.metric() : row.formula(), step);
  }

  /** The symbols that some steps of working show, by letter, each once for what it means there. */
  public List<SymbolRow> symbols(List<CalculationStep> steps) {
    FormulaSymbols symbols = words.symbols();
    return FormulaSymbols.sorted(
        steps.stream()
            .flatMap(step -> symbols.of(step.id(), unnumbered(step)).stream())
            .distinct()
            .toList());
  }

  /** The same formula with a mark for each number. */
  private String unnumbered(CalculationStep step) {
    return new Template(words.tables().workings().row(step.id()).formula())
        .filled(
            name ->
                name.equals("result")
                    ? Optional.of(NUMBER)
                    : step.evidence().find(name).map(Voice::mark));
  }

  /** What only turns a part of a formula on leaves no mark. */
  private static String mark(Evidence.Seen seen) {
    return seen instanceof Evidence.Seen.Word word && word.text().isEmpty() ? "" : NUMBER;
  }

  /** The unit in which the numbers of a symbol are printed; empty for plain numbers. */
  public String unit(SymbolRow symbol) {
    CalculationNumbers numbers = new CalculationNumbers(units);
    return symbol.units().stream()
        .map(numbers::unit)
        .distinct()
        .collect(Collectors.joining(" or "));
  }

  private String template(String text, CalculationStep step) {
    CalculationNumbers numbers = new CalculationNumbers(units);
    return new Template(text)
        .filled(
            name ->
                name.equals("result")
                    ? Optional.of(numbers.say(step.result()))
                    : step.evidence().find(name).map(seen -> input(seen, numbers)));
  }

  private String input(Evidence.Seen seen, CalculationNumbers numbers) {
    if (seen instanceof Evidence.Seen.Amount amount) {
      String said = numbers.say(amount.measure());
      return amount.measure().amount() < 0 ? "(" + said + ")" : said;
    }
    return switch (seen.name()) {
      case "vine" -> word("criteria.vine", word(seen));
      case "check" -> reference(word(seen));
      default -> word(seen);
    };
  }

  /** What the site file states, with its name. */
  public String stated(Stated stated) {
    return references().stated(stated);
  }

  /** True for an answer so plain that it is not worth a word where the base does not say it. */
  public boolean plain(Decision decision) {
    return decision.proposed() instanceof Outcome.Word word
        && (words.tables().joints().find(word.text()).filter(JointRow::usual).isPresent()
            || plain(decision.question()).filter(word.text()::equals).isPresent());
  }

  /** The plain answer of a question that a base design does not speak of, where there is one. */
  public Optional<String> plain(Question question) {
    return words.options().find("plain", question.id(), Reader.BUILDER);
  }

  /**
   * How a changed answer is told as a cause.
   *
   * @param worked true where its share was worked out, so that what explains it is so
   */
  public String driver(Decision decision, boolean worked) {
    SubjectRow row = words.subjects().row(decision.question());
    String now = proposed(decision);
    String then =
        decision
            .base()
            .map(base -> say(decision.question(), base))
            .orElseGet(() -> SAYINGS.say("none"));
    String change =
        reader == Reader.CLIENT
            ? SAYINGS.say("driver.client", "now", row.phrase().of(now), "then", then)
            : SAYINGS.say("driver", "name", row.builder(), "now", now, "then", then);
    return change + (worked ? remark(decision) : "");
  }

  /**
   * The name of a changed answer that is a cause, with what explains it.
   *
   * @param worked true where its share was worked out, so that what explains it is so
   */
  public String cause(Decision decision, boolean worked) {
    return label(decision.question()) + (worked ? remark(decision) : "");
  }

  private String remark(Decision decision) {
    SubjectRow row = words.subjects().row(decision.question());
    boolean holds =
        row.remarkFrom().isEmpty()
            || decision
                .base()
                .map(base -> say(decision.question(), base))
                .filter(row.remarkFrom()::equals)
                .isPresent();
    return holds && !row.remark().isEmpty() ? " (" + row.remark() + ")" : "";
  }

  /** The answer with what its name hides: a nominal size with its dressed dimensions. */
  public String detailed(Question question, Outcome outcome) {
    String said = say(question, outcome);
    return outcome instanceof Outcome.Word word
        ? words.options().dressed(word.text()).map(size -> dressed(said, size)).orElse(said)
        : said;
  }

  /** The same as a noun phrase for the client. */
  public String described(Question question, Outcome outcome) {
    String said = detailed(question, outcome);
    return reader == Reader.CLIENT ? words.subjects().row(question).phrase().of(said) : said;
  }

  /** An answer with what it is an answer to: {@code crossbeams 2x6}. */
  public String member(Question question, Outcome outcome) {
    String said = say(question, outcome);
    SubjectRow row = words.subjects().row(question);
    return switch (reader) {
      case CLIENT -> row.phrase().of(said);
      case BUILDER -> row.builder() + " " + said;
      case ENGINEER -> question.id() + " = " + said;
    };
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

  /** What a site may ask otherwise, in words. */
  public ChangeWords changes() {
    return new ChangeWords(this, references());
  }

  private References references() {
    return new References(words, this);
  }

  private String dressed(String said, SizeRow size) {
    String breadth = dressed(size.thicknessIn());
    String depth = dressed(size.widthIn());
    return SAYINGS.say(
        breadth.equals(depth) ? "dressed.square" : "dressed",
        Map.of("size", said, "breadth", breadth, "depth", depth));
  }

  /** A timber is told as it measures, to whomever. */
  private String dressed(double inches) {
    return reader == Reader.CLIENT
        ? new ClientNumbers(units).exact(inches)
        : say(Measure.inches(inches));
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

  /** A share as percent, a slenderness as it is; what is not all is not told as all. */
  private static String ratio(double ratio) {
    long percent = Math.round(ratio * 100);
    if (ratio < 1 && percent == 100) {
      return Math.floor(ratio * 1000) / 10 + " %";
    }
    return ratio < GREATEST_SHARE
        ? percent + " %"
        : MeasureText.imperial(Measure.count(Math.round(ratio * 10) / 10.0));
  }

  /** The member is named by the sentence already. */
  static String tail(String builderWords) {
    return builderWords.substring(
        builderWords.indexOf(": ") < 0 ? 0 : builderWords.indexOf(": ") + 2);
  }
}
