package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.TableException;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;
import org.scantling.words.FactWords;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/**
 * Proves the rule base complete and consistent: every question has a rule; every rule has cases,
 * words for every reader and something to lean on; every row exists and says its source; ids are
 * unique; no bound from below is above its bound from above.
 */
public final class Lint {
  private static final Sayings SAYINGS = Sayings.of("rule-base");

  private final List<RuleFile> files;
  private final Set<String> running;
  private final Tables tables;
  private final Words words;
  private final Figures figures;
  private final Map<String, RuleText> rules = new LinkedHashMap<>();
  private final List<LintReport.Proof> proofs = new ArrayList<>();
  private final List<LintReport.Complaint> complaints = new ArrayList<>();

  Lint(List<RuleFile> files, Set<String> running, Tables tables, Words words) {
    this.files = files;
    this.running = running;
    this.tables = tables;
    this.words = words;
    this.figures = new Figures(tables);
  }

  /**
   * @param running ids of the rules that the program runs
   */
  public static LintReport of(Set<String> running, Tables tables, Words words) {
    return new Lint(RuleFile.all(), running, tables, words).report();
  }

  LintReport report() {
    ids();
    questions();
    cases();
    sentences();
    support();
    tables();
    bounds();
    return new LintReport(proofs, complaints);
  }

  private void ids() {
    for (RuleFile file : files) {
      for (RuleText rule : RuleText.in(file)) {
        RuleText other = rules.put(rule.id(), rule);
        if (other != null) {
          complain(file.place(), "id-taken", "rule", rule.id(), "place", other.place());
        }
        if (rule.verdict() == Verdict.NONE) {
          complain(rule.id(), "finds-nothing");
        }
      }
    }
    differences(running, rules.keySet(), "not-written");
    differences(rules.keySet(), running, "not-run");
    proved("proved.ids", rules.size());
  }

  private void differences(Set<String> these, Set<String> those, String saying) {
    SortedSet<String> only = new TreeSet<>(these);
    only.removeAll(those);
    only.forEach(id -> complain(id, saying));
  }

  private void questions() {
    Set<Question> asked = new TreeSet<>();
    rules.values().forEach(rule -> asked.addAll(rule.questions()));
    rules.values().forEach(rule -> asked.addAll(Named.by(rule, tables)));
    for (Question question : Question.values()) {
      if (!asked.contains(question)) {
        complain(question.id(), "no-rule");
      }
      if (words.subjects().rows().stream().noneMatch(row -> row.question() == question)) {
        complain(question.id(), "no-subject");
      }
    }
    proved("proved.questions", Question.values().length);
  }

  private void cases() {
    int count = 0;
    for (RuleFile file : files) {
      Cases cases = Cases.of(file);
      if (!cases.fault().isEmpty()) {
        complain(file.place(), "cases-unreadable", "why", cases.fault());
      }
      Set<String> own = new TreeSet<>(RuleText.in(file).stream().map(RuleText::id).toList());
      own.forEach(id -> shown(id, cases, file));
      cases.rules().stream()
          .filter(id -> !own.contains(id))
          .forEach(id -> complain(file.place(), "case-elsewhere", "rule", id));
      count += cases.count();
    }
    proved("proved.cases", count);
  }

  private void shown(String id, Cases cases, RuleFile file) {
    if (cases.firing(id).isEmpty()) {
      complain(id, "never-fires", "place", file.place());
    } else if (!cases.silent(id)) {
      complain(id, "never-silent", "place", file.place());
    }
  }

  private void sentences() {
    int count = 0;
    for (String id : rules.keySet()) {
      for (Reader reader : Reader.values()) {
        if (words.written(id, reader).filter(text -> !text.isBlank()).isEmpty()) {
          complain(id, "no-words", "reader", reader.name().toLowerCase(Locale.ROOT));
        } else {
          count++;
        }
      }
    }
    differences(words.rules(), rules.keySet(), "words-of-none");
    proved("proved.sentences", count);
  }

  /** What a rule leans on: rows that exist, or facts of the site, the base and the work before. */
  private void support() {
    Set<String> known = FactWords.read(words).known();
    int rows = 0;
    for (RuleText rule : rules.values()) {
      if (rule.premises().stream().allMatch(Premise::absent)) {
        complain(rule.id(), "leans-on-nothing");
      }
      for (Premise premise : rule.premises()) {
        if (!known.contains(premise.fact())) {
          complain(rule.id(), "unknown-fact", "fact", premise.fact());
        }
        boolean row = figures.rows(premise);
        if (row && figures.of(premise).isEmpty()) {
          complain(rule.id(), "unknown-row", "row", premise.id().orElse(""));
        }
        rows += row ? 1 : 0;
      }
    }
    proved("proved.rows", rows);
  }

  /** Reading a table resolves the source of every row, or says which row has none. */
  private void tables() {
    try {
      tables.readAll();
      proved("proved.sources", sourced());
    } catch (TableException wrong) {
      complaints.add(new LintReport.Complaint(wrong.file(), String.valueOf(wrong.getMessage())));
    }
  }

  private int sourced() {
    Set<Figure> read = new HashSet<>();
    rules.values().forEach(rule -> rule.premises().forEach(each -> read.addAll(figures.of(each))));
    return read.size();
  }

  private void bounds() {
    List<BoundPairs.Pair> pairs = new ArrayList<>();
    Arrays.asList(tables.thumbs(), tables.wind(), tables.snow(), tables.live())
        .forEach(table -> pairs.addAll(BoundPairs.in(table)));
    pairs.stream()
        .filter(BoundPairs.Pair::crossed)
        .forEach(
            pair ->
                complain(
                    pair.low(),
                    "bounds-crossed",
                    "low",
                    String.valueOf(pair.lowAmountRatio()),
                    "other",
                    pair.high(),
                    "high",
                    String.valueOf(pair.highAmountRatio())));
    vines();
    FixedBounds fixed = new FixedBounds(rules.values(), figures);
    fixed.crossed().forEach(complaints::add);
    proved("proved.bounds", pairs.size() + fixed.count());
  }

  /** The weight that is counted lies between the lightest and the heaviest of its class. */
  private void vines() {
    for (VineRow vine : tables.vines().rows()) {
      boolean between =
          vine.wetLowPsf() <= vine.wetDesignPsf() && vine.wetDesignPsf() <= vine.wetHighPsf();
      if (!between) {
        complain(vine.id(), "weight-outside");
      }
    }
  }

  private void proved(String saying, int count) {
    String sentence = SAYINGS.say(saying);
    if (count == 0) {
      complain(SAYINGS.say("rule-base"), "nothing-proved", "sentence", sentence);
    }
    proofs.add(new LintReport.Proof(sentence, count));
  }

  private void complain(String where, String saying, String... blanks) {
    complaints.add(new LintReport.Complaint(where, SAYINGS.say(saying, blanks)));
  }
}
