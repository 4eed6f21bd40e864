package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Reason;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Several proposals side by side: what differs first, then why, then what is the same. */
final class ComparisonPage {
  private final SideBySide comparison;
  private final Voice voice;
  private final Page page = new Page();

  private ComparisonPage(SideBySide comparison, Voice voice) {
    this.comparison = comparison;
    this.voice = voice;
  }

  static Page of(List<ComparedSite> columns, Words words, UnitSystem units) {
    SideBySide comparison = new SideBySide(columns, words);
    ComparisonPage page = new ComparisonPage(comparison, words.voice(Reader.BUILDER, units));
    page.write();
    return page.page;
  }

  private void write() {
    page.title(comparison.columns().size() + " proposals side by side");
    page.paragraph(summary());
    page.items(key());
    new ComparisonGrid(comparison, voice).writeDifferent(page);
    why();
    refused();
    new ComparisonGrid(comparison, voice).writeSame(page);
  }

  /** The answer: what differs of timber and ground. */
  private String summary() {
    List<String> safety = new ArrayList<>();
    for (SubjectRow row : comparison.rows()) {
      if (row.safety() && comparison.differs(row)) {
        safety.add(voice.label(row.question()) + " " + groups(row));
      }
    }
    long proposed =
        comparison.columns().stream().filter(each -> each.proposal().proposed()).count();
    String refusals =
        proposed == comparison.columns().size()
            ? ""
            : " " + Sentence.list(refusedLetters()) + ": a case for a licensed engineer.";
    return (safety.isEmpty()
            ? proposed > 1 ? sameSizes() : "There are no two proposals to compare."
            : "Timber and holes differ in: " + String.join("; ", safety) + ".")
        + refusals;
  }

  /** Sizes and holes may be the same where lengths or counts are not. */
  private String sameSizes() {
    return comparison.rows().stream().anyMatch(each -> !each.place() && comparison.differs(each))
        ? "The timber sizes and the holes are the same; what else differs is below."
        : "Nothing of the structure differs.";
  }

  private List<String> refusedLetters() {
    List<String> letters = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      if (!comparison.columns().get(i).proposal().proposed()) {
        letters.add(SideBySide.letter(i));
      }
    }
    return letters;
  }

  /** {@code 4x4 (A and B), 6x6 (C)}. */
  private String groups(SubjectRow row) {
    List<String> groups = new ArrayList<>();
    comparison
        .byAnswer(row)
        .forEach(
            (answer, columns) ->
                groups.add(voice.say(row.question(), answer) + " (" + letters(columns) + ")"));
    return String.join(", ", groups);
  }

  private static String letters(List<Integer> columns) {
    return Sentence.list(columns.stream().map(SideBySide::letter).toList());
  }

  private List<Block.Item> key() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      ComparedSite column = comparison.columns().get(i);
      String set =
          column.settings().isEmpty() ? "" : ", with " + String.join(", ", column.settings());
      String end = column.proposal().proposed() ? "" : ": needs an engineer";
      items.add(
          new Block.Item(
              SideBySide.letter(i),
              column.proposal().title() + " (" + column.file() + ")" + set + end));
    }
    return items;
  }

  private void why() {
    List<Block.Item> why = new ArrayList<>();
    List<String> given = new ArrayList<>();
    List<String> following = new ArrayList<>();
    if (lengths() > 1) {
      given.add("length of the walk");
    }
    for (SubjectRow row : comparison.rows()) {
      if (comparison.differs(row)) {
        if (row.given() && asked(row)) {
          given.add(row.builder());
        } else if (row.follows()) {
          following.add(row.builder());
        } else {
          why.add(new Block.Item(Sentence.capital(row.builder()), reasons(row)));
        }
      }
    }
    if (!given.isEmpty()) {
      why.add(0, new Block.Item(givenWhere(), String.join("; ", given) + "."));
    }
    if (!following.isEmpty()) {
      why.add(new Block.Item("These follow", String.join("; ", following) + "."));
    }
    if (!why.isEmpty()) {
      page.heading("Why they differ").items(why);
    }
  }

  /** Columns of one file differ by what is set beside it; what is set for all makes none. */
  private String givenWhere() {
    long files = comparison.columns().stream().map(ComparedSite::file).distinct().count();
    return files == 1 ? "Set differently from the file (--set)" : "Different in the files";
  }

  /** How many lengths of walk are compared; the walk itself is asked of no rule. */
  private long lengths() {
    return comparison.columns().stream()
        .map(column -> column.proposal().result())
        .filter(Result.Proposed.class::isInstance)
        .map(result -> ((Result.Proposed) result).structure().geometry().lengthIn())
        .distinct()
        .count();
  }

  private boolean asked(SubjectRow row) {
    return comparison.columns().stream()
        .flatMap(column -> comparison.decision(row, column).stream())
        .allMatch(SideBySide::asked);
  }

  /** Each answer with its governing reason; columns whose reason reads the same stand together. */
  private String reasons(SubjectRow row) {
    Map<String, List<Integer>> told = new LinkedHashMap<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      int column = i;
      comparison
          .decision(row, comparison.columns().get(i))
          .ifPresent(
              each -> told.computeIfAbsent(reason(each), key -> new ArrayList<>()).add(column));
    }
    List<String> parts = new ArrayList<>();
    told.forEach((reason, columns) -> parts.add(letters(columns) + " " + reason));
    return String.join(" ", parts);
  }

  private String reason(Decision decision) {
    Outcome proposed = decision.proposed();
    Reason reason = decision.governing();
    return voice.say(decision.question(), proposed)
        + ": "
        + voice.sentence(reason, decision)
        + " ("
        + voice.source(reason.source())
        + ")";
  }

  private void refused() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      if (comparison.columns().get(i).proposal().result() instanceof Result.NeedsEngineer none) {
        String question =
            none.broken().map(each -> "no " + voice.label(each) + " works. ").orElse("");
        items.add(
            new Block.Item(
                SideBySide.letter(i),
                Sentence.capital(question)
                    + Stopped.sourced(voice, none)
                    + " What rules it out is "
                    + voice.path(none.demand())
                    + " ("
                    + none.demand()
                    + ")."));
      }
    }
    if (!items.isEmpty()) {
      page.heading("Cases for a licensed engineer").items(items);
    }
  }
}
