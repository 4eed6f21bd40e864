package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.SourceKind;
import org.scantling.tables.Tables;
import org.scantling.words.FactWords;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** All rules, told from the files they are written in. */
public final class Rulebook {
  private final Map<String, RuleEntry> byId = new LinkedHashMap<>();
  private final Tables tables;
  private final Words words;
  private final FactWords facts;
  private final Figures figures;

  private Rulebook(Tables tables, Words words) {
    this.tables = tables;
    this.words = words;
    this.facts = FactWords.read(words);
    this.figures = new Figures(tables);
  }

  /**
   * @param notes the rules that the program runs
   */
  public static Rulebook read(SortedMap<String, RuleNote> notes, Tables tables, Words words) {
    Rulebook book = new Rulebook(tables, words);
    for (RuleFile file : RuleFile.all()) {
      Cases cases = Cases.of(file);
      for (RuleText rule : RuleText.in(file)) {
        Optional.ofNullable(notes.get(rule.id()))
            .ifPresent(note -> book.byId.put(rule.id(), book.entry(note, rule, cases)));
      }
    }
    return book;
  }

  /** Every rule, phase by phase along the load path. */
  public List<RuleEntry> rules() {
    return byId.values().stream()
        .sorted((one, other) -> one.note().phase().compareTo(other.note().phase()))
        .toList();
  }

  public Optional<RuleEntry> rule(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The rules about one question. */
  public List<RuleEntry> about(Question question) {
    return rules().stream().filter(rule -> rule.questions().contains(question)).toList();
  }

  /** The rules that find this and are about no question. */
  public List<RuleEntry> that(Verdict verdict) {
    return rules().stream().filter(rule -> rule.verdict() == verdict).toList();
  }

  /** The rules of thumb that bound a question from below by a row of thumb.csv. */
  public List<RuleNote> thumbs(Question question) {
    return about(question).stream()
        .filter(rule -> rule.note().source().kind() == SourceKind.COMMON_PRACTICE)
        .filter(rule -> rule.verdict() == Verdict.REJECTS || rule.verdict() == Verdict.AT_LEAST)
        .filter(rule -> rule.figures().stream().anyMatch(each -> each.table().equals("thumb.csv")))
        .map(RuleEntry::note)
        .toList();
  }

  private RuleEntry entry(RuleNote note, RuleText rule, Cases cases) {
    List<Question> questions = questions(rule);
    List<Figure> rows = new ArrayList<>();
    List<String> reads = new ArrayList<>();
    for (Premise premise : rule.premises()) {
      rows.addAll(narrowed(figures.of(premise), premise, questions));
      reads.add(told(premise));
    }
    Map<Reader, String> said = new EnumMap<>(Reader.class);
    for (Reader reader : Reader.values()) {
      words.written(rule.id(), reader).ifPresent(text -> said.put(reader, text));
    }
    return new RuleEntry(
        note,
        rule.place(),
        rule.outcome(),
        rule.verdict(),
        questions,
        reads.stream().distinct().toList(),
        rows.stream().distinct().toList(),
        said,
        cases.firing(rule.id()));
  }

  /** A rule over all checks is about those of its own members. */
  private static List<Figure> narrowed(
      List<Figure> rows, Premise premise, List<Question> questions) {
    boolean checks = premise.fact().equals("CheckRow") && premise.id().isEmpty();
    return checks
        ? rows.stream().filter(row -> questions.stream().anyMatch(each -> of(row, each))).toList()
        : rows;
  }

  private static boolean of(Figure row, Question question) {
    return row.id().startsWith(question.subject() + ".");
  }

  private List<Question> questions(RuleText rule) {
    List<Question> named = Named.by(rule, tables);
    return named.isEmpty() ? rule.questions().stream().distinct().toList() : named;
  }

  private String told(Premise premise) {
    return facts.say(
        premise.fact(), premise.absent(), premise.questions(), premise.demand(), premise.id());
  }
}
