package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal.Result;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Several proposals side by side: what differs first, then why, then what is the same. */
final class ComparisonPage {
  private static final Sayings SAYINGS = Sayings.of("comparison");

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
    page.title(SAYINGS.say("title", "count", Integer.toString(comparison.columns().size())));
    page.paragraph(summary());
    page.items(key());
    new ComparisonGrid(comparison, voice).writeDifferent(page);
    new ComparisonGrid(comparison, voice).writeFigures(page);
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
    List<String> refused = refusedLetters();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("differences", String.join("; ", safety));
    if (!refused.isEmpty()) {
      blanks.put("refused", Sentence.list(refused));
    }
    boolean two = comparison.columns().size() - refused.size() > 1;
    String same = two ? sameSizes() : "summary.alone";
    return SAYINGS.say(safety.isEmpty() ? same : "summary", blanks);
  }

  /** Sizes and holes may be the same where lengths or counts are not. */
  private String sameSizes() {
    return comparison.rows().stream().anyMatch(each -> !each.place() && comparison.differs(each))
        ? "summary.same-sizes"
        : "summary.same";
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
                groups.add(
                    SAYINGS.say(
                        "group",
                        "value",
                        voice.say(row.question(), answer),
                        "columns",
                        letters(columns))));
    return String.join(", ", groups);
  }

  private static String letters(List<Integer> columns) {
    return Sentence.list(columns.stream().map(SideBySide::letter).toList());
  }

  private List<Block.Item> key() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      ComparedSite column = comparison.columns().get(i);
      Map<String, String> blanks = new HashMap<>();
      blanks.put("title", column.proposal().title());
      blanks.put("file", column.file());
      if (!column.settings().isEmpty()) {
        blanks.put("set", String.join(", ", column.settings()));
      }
      if (column.proposal().bases().isPresent()) {
        blanks.put("base", column.proposal().baseTitle());
      }
      if (!column.proposal().proposed()) {
        blanks.put("refused", "");
      }
      items.add(new Block.Item(SideBySide.letter(i), SAYINGS.say("key", blanks)));
    }
    return items;
  }

  private void why() {
    List<Block.Item> why = new ArrayList<>();
    List<String> given = new ArrayList<>();
    List<String> following = new ArrayList<>();
    if (lengths() > 1) {
      given.add(SAYINGS.say("length"));
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
      why.add(new Block.Item(SAYINGS.say("follow"), String.join("; ", following) + "."));
    }
    if (!why.isEmpty()) {
      page.heading(SAYINGS.say("why")).items(why);
    }
  }

  /** Columns of one file differ by what is set beside it; what is set for all makes none. */
  private String givenWhere() {
    long files = comparison.columns().stream().map(ComparedSite::file).distinct().count();
    return SAYINGS.say(files == 1 ? "given.set" : "given.files");
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
    return SAYINGS.say(
        "reason",
        "value",
        voice.say(decision.question(), decision.proposed()),
        "why",
        Sourced.sentence(voice, decision.governing(), decision));
  }

  private void refused() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      if (comparison.columns().get(i).proposal().result() instanceof Result.NeedsEngineer none) {
        Map<String, String> blanks = new HashMap<>();
        none.broken().ifPresent(each -> blanks.put("part", voice.label(each)));
        blanks.put("stopped", Stopped.sourced(voice, none));
        blanks.put("demand", voice.path(none.demand()));
        blanks.put("path", none.demand());
        items.add(new Block.Item(SideBySide.letter(i), SAYINGS.say("refused", blanks)));
      }
    }
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("refused.heading")).items(items);
    }
  }
}
