package org.scantling.rulecases;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Answer;
import org.scantling.reasons.AtPostsTrial;
import org.scantling.reasons.BaseGap;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Chosen;
import org.scantling.reasons.Confirmed;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Eased;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Given;
import org.scantling.reasons.GoneBackTo;
import org.scantling.reasons.GradeByRole;
import org.scantling.reasons.LargestAsked;
import org.scantling.reasons.OptionCheck;
import org.scantling.reasons.Proven;
import org.scantling.reasons.ProvenCheck;
import org.scantling.reasons.Question;
import org.scantling.reasons.Relied;
import org.scantling.reasons.RoleTimber;
import org.scantling.reasons.ServiceRecord;
import org.scantling.reasons.SizeOf;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.StockMatch;
import org.scantling.reasons.StyleMatch;
import org.scantling.reasons.Worked;
import org.scantling.tables.DefaultWord;
import org.scantling.tables.Loosened;
import org.scantling.tables.NumberRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.TableRow;
import tools.jackson.databind.JsonNode;

/** Facts as cases write them: a bare word is a table row, an object is told by its first key. */
final class FactReader {
  private static final Source CASE = new Source(SourceKind.CALCULATION, "a case of ours", false);
  private static final String PAIR = "2-";

  private final TableCells cells;
  private final DoubleUnaryOperator nudge;
  private final Map<String, Function<Entry, Fact>> kinds = new TreeMap<>();

  FactReader(TableCells cells, DoubleUnaryOperator nudge) {
    this.cells = cells;
    this.nudge = nudge;
    kinds.put("row", this::row);
    kinds.put("default", this::defaultWord);
    kinds.put("given", e -> new Given(demand(e, "given"), e.number("number")));
    kinds.put("chosen", e -> new Chosen(demand(e, "chosen"), e.word("word")));
    kinds.put("proven", FactReader::proven);
    kinds.put("answer", FactReader::answer);
    kinds.put("worked", FactReader::worked);
    kinds.put("parts", FactReader::parts);
    kinds.put("candidate", this::candidate);
    kinds.put("plain", e -> new Candidate.Plain(question(e, "plain"), e.word("option")));
    kinds.put("cut", FactReader::cut);
    kinds.put("size", this::size);
    kinds.put("check", FactReader::check);
    kinds.put("dead-end", FactReader::deadEnd);
    kinds.put("gone-back-to", e -> new GoneBackTo(question(e, "gone-back-to"), e.word("option")));
    kinds.put("stock-match", FactReader::stockMatch);
    kinds.put("largest", this::largest);
    kinds.put("style-match", FactReader::styleMatch);
    kinds.put("ungraded", FactReader::ungraded);
    kinds.put(
        "role-timber",
        e ->
            new RoleTimber(
                question(e, "role-timber"), e.word("word"), e.word("said-by").equals("site")));
    kinds.put("grade-by-role", e -> new GradeByRole(question(e, "grade-by-role"), e.word("size")));
    kinds.put("bay-trial", FactReader::bayTrial);
    kinds.put("base-gap", FactReader::baseGap);
    kinds.put(
        "at-posts-trial",
        e ->
            new AtPostsTrial(
                e.word("at-posts-trial"),
                e.word("crossbeams"),
                e.number("breadth"),
                e.number("timber")));
    kinds.put("relied", e -> new Relied(e.word("relied")));
    kinds.put(
        "proven-check",
        e -> new ProvenCheck(e.word("proven-check"), e.number("ratio"), e.count("since")));
    kinds.put(
        "service-record", e -> new ServiceRecord(e.count("service-record"), e.number("slope", 0)));
    kinds.put("eased", e -> new Eased(e.word("eased"), e.number("ratio")));
    kinds.put("loosened", FactReader::loosened);
    kinds.put("confirmed", e -> new Confirmed(checked(e, "confirmed")));
  }

  Fact read(String where, JsonNode node) {
    try {
      if (node.isString()) {
        return cells.row(node.asString());
      }
      Entry entry = new Entry(where, node, new NumberWords(cells), nudge);
      Fact fact = kinds.get(entry.kind(kinds.keySet())).apply(entry);
      entry.refuseOthers();
      return fact;
    } catch (IllegalArgumentException e) {
      throw new CaseFault(where + ": " + node + ": " + e.getMessage());
    }
  }

  private Fact row(Entry entry) {
    TableRow row = cells.row(entry.word("row"));
    if (!(row instanceof NumberRow number)) {
      throw new CaseFault(entry.where() + ": row " + row.id() + " holds no single number");
    }
    return TableCells.with(number, entry.number("value"));
  }

  private static Fact loosened(Entry entry) {
    String id = entry.word("loosened");
    return new Loosened(id, "a load", "10 psf", "8 psf", "a code", "", "", "a test", CASE);
  }

  private Fact defaultWord(Entry entry) {
    DefaultWord row = (DefaultWord) cells.row("defaults:" + entry.word("default"));
    return new DefaultWord(row.id(), entry.word("word"), row.statement(), row.source(), row.note());
  }

  private static Fact proven(Entry entry) {
    Question question = question(entry, "proven");
    if (question == Question.POST_SIZE && entry.has("breadth")) {
      return Proven.posts(entry.word("option"), entry.number("breadth"));
    }
    return question.numeric()
        ? Proven.number(question, entry.number("number"))
        : Proven.option(question, entry.word("option"));
  }

  private static Fact answer(Entry entry) {
    Question question = question(entry, "answer");
    return question.numeric()
        ? Answer.number(question, entry.number("number"))
        : Answer.option(question, entry.word("option"));
  }

  private static Fact worked(Entry entry) {
    return new Worked(
        entry.word("worked"),
        question(entry, "question"),
        entry.number("number"),
        Evidence.none(),
        CASE);
  }

  private static Fact parts(Entry entry) {
    int count = entry.count("count");
    return new Candidate.Parts(
        question(entry, "parts"),
        Integer.toString(count),
        count,
        entry.number("pitch"),
        entry.number("shortest", entry.number("pitch")),
        entry.number("stretch", 1));
  }

  private static Fact cut(Entry entry) {
    String option = entry.word("option");
    return new Candidate.Cut(
        question(entry, "cut"),
        option,
        option.split("\\+").length,
        entry.number("longest", 1),
        entry.number("bought", 1),
        (int) entry.number("shared", 0));
  }

  private Fact candidate(Entry entry) {
    String option = entry.word("option");
    SizeRow row = stock(option);
    return new Candidate.Size(
        question(entry, "candidate"),
        option,
        plies(option),
        entry.number("breadth", row.thicknessIn()),
        entry.number("depth", row.widthIn()));
  }

  private Fact size(Entry entry) {
    String option = entry.word("option");
    SizeRow row = stock(option);
    return new SizeOf(
        question(entry, "size"),
        plies(option),
        entry.number("breadth", row.thicknessIn()),
        entry.number("depth", row.widthIn()));
  }

  private static Fact check(Entry entry) {
    return new OptionCheck(
        question(entry, "question"), entry.word("option"), checked(entry, "check"));
  }

  private static Checked checked(Entry entry, String key) {
    Check check = new Check(entry.number("demand"), entry.number("capacity"));
    return new Checked(entry.word(key), "a member", "D + S", 1, check, Unit.PSI, CASE);
  }

  private static Fact deadEnd(Entry entry) {
    return new DeadEnd(
        question(entry, "dead-end"),
        entry.word("option"),
        question(entry, "broken").id(),
        entry.word("check"),
        entry.number("ratio"));
  }

  private static Fact stockMatch(Entry entry) {
    return new StockMatch(
        question(entry, "stock-match"), entry.word("proven"), entry.word("option"));
  }

  private Fact largest(Entry entry) {
    Question question = question(entry, "largest");
    SizeRow row = stock(entry.word("size"));
    return new LargestAsked(
        question,
        Demand.of("preferences.largest-" + question.subject()),
        row.id(),
        row.thicknessIn(),
        row.widthIn());
  }

  private static Fact styleMatch(Entry entry) {
    return new StyleMatch(entry.word("style-match"), entry.word("proven"), entry.word("option"));
  }

  private static Fact ungraded(Entry entry) {
    return new Candidate.Ungraded(
        question(entry, "ungraded"),
        entry.word("option"),
        entry.word("species"),
        entry.word("grade"));
  }

  private static Fact bayTrial(Entry entry) {
    return new BayTrial(entry.word("bay-trial"), entry.number("timber"), entry.count("new-sizes"));
  }

  private static Fact baseGap(Entry entry) {
    return new BaseGap(
        entry.word("base"),
        entry.word("than"),
        entry.word("base-gap"),
        entry.count("place"),
        entry.number("amount"),
        entry.number("than-amount"),
        Unit.COUNT);
  }

  private SizeRow stock(String option) {
    String size = option.startsWith(PAIR) ? option.substring(PAIR.length()) : option;
    return (SizeRow) cells.row("sizes:" + size);
  }

  private static int plies(String option) {
    return option.startsWith(PAIR) ? 2 : 1;
  }

  private static Question question(Entry entry, String key) {
    return Question.of(entry.word(key));
  }

  static Demand demand(Entry entry, String key) {
    String path = entry.word(key);
    for (Demand demand : Demand.values()) {
      if (demand.path().equals(path)) {
        return demand;
      }
    }
    throw new IllegalArgumentException("no demand is called '" + path + "'");
  }
}
