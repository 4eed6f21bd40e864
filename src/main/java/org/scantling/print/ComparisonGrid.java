package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.scantling.print.ComparedSite.Figures;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** What differs, side by side, and what is the same. */
final class ComparisonGrid {
  private static final Sayings SAYINGS = Sayings.of("comparison");
  private static final int MOST_COLUMNS = 3;
  private static final String NOTHING = "-";

  private final SideBySide comparison;
  private final Voice voice;
  private final Map<String, List<SubjectRow>> lines = new LinkedHashMap<>();

  ComparisonGrid(SideBySide comparison, Voice voice) {
    this.comparison = comparison;
    this.voice = voice;
    for (SubjectRow row : comparison.rows()) {
      if (!row.line().isEmpty()) {
        lines.computeIfAbsent(row.line(), line -> new ArrayList<>()).add(row);
      }
    }
  }

  void writeDifferent(Page page) {
    writeDifferent(page, row -> true);
  }

  /** Only the lines of what a headline names, and of how the walk is divided. */
  void writeLeading(Page page) {
    writeDifferent(page, row -> (row.lead() && !row.usual()) || row.question() == Question.BAYS);
  }

  private void writeDifferent(Page page, Predicate<SubjectRow> which) {
    List<String> different =
        lines.keySet().stream()
            .filter(line -> rows(line).stream().anyMatch(comparison::differs))
            .filter(line -> rows(line).stream().anyMatch(which))
            .toList();
    if (!different.isEmpty()) {
      page.heading(SAYINGS.say("different"));
      for (int from = 0; from < comparison.columns().size(); from += MOST_COLUMNS) {
        int to = Math.min(from + MOST_COLUMNS, comparison.columns().size());
        page.add(new Block.Grid(grid(different, from, to)));
      }
    }
  }

  /** Money and time, where prices were given. */
  void writeFigures(Page page) {
    if (comparison.columns().stream().anyMatch(each -> each.figures().isPresent())) {
      List<List<String>> grid = new ArrayList<>();
      grid.add(figures("", SideBySide::letter));
      grid.add(figures(SAYINGS.say("figures.cost"), column -> figure(column, Figures::cost)));
      grid.add(
          figures(SAYINGS.say("figures.left-out"), column -> figure(column, Figures::leftOut)));
      grid.add(figures(SAYINGS.say("figures.hours"), column -> figure(column, Figures::hours)));
      page.heading(SAYINGS.say("figures")).add(new Block.Grid(grid));
    }
  }

  private List<String> figures(String name, IntFunction<String> cell) {
    List<String> line = new ArrayList<>(List.of(name));
    for (int column = 0; column < comparison.columns().size(); column++) {
      line.add(cell.apply(column));
    }
    return line;
  }

  private String figure(int column, Function<Figures, String> which) {
    return comparison.columns().get(column).figures().map(which).orElse(NOTHING);
  }

  private List<SubjectRow> rows(String line) {
    return lines.getOrDefault(line, List.of());
  }

  /** One structure alone has nothing to be the same as. */
  void writeSame(Page page) {
    long structures =
        comparison.columns().stream().filter(each -> each.proposal().proposed()).count();
    boolean all = structures == comparison.columns().size();
    if (structures > 1) {
      writeSame(page, SAYINGS.say(all ? "same" : "same.structures"));
    }
  }

  private void writeSame(Page page, String heading) {
    List<String> same = new ArrayList<>();
    lines.forEach(
        (line, rows) -> {
          if (rows.stream().noneMatch(comparison::differs) && !common(rows).equals(NOTHING)) {
            same.add(Compared.said(line, common(rows)));
          }
        });
    if (!same.isEmpty()) {
      page.heading(heading).paragraph(Sentence.capital(String.join("; ", same)) + ".");
    }
  }

  private List<List<String>> grid(List<String> different, int from, int to) {
    List<List<String>> grid = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    if (comparison.oneBase()) {
      head.add(SAYINGS.say("column.base"));
    }
    for (int column = from; column < to; column++) {
      head.add(SideBySide.letter(column));
    }
    grid.add(head);
    different.forEach(line -> grid.add(line(line, from, to)));
    return grid;
  }

  private List<String> line(String name, int from, int to) {
    List<SubjectRow> rows = rows(name);
    List<String> line = new ArrayList<>(List.of(Sentence.capital(name)));
    if (comparison.oneBase()) {
      line.add(cells(rows, this::base));
    }
    for (ComparedSite column : comparison.columns().subList(from, to)) {
      line.add(cells(rows, row -> here(row, column)));
    }
    return line;
  }

  /** The cell of any column that has one; all that have one have the same. */
  private String common(List<SubjectRow> rows) {
    LinkedHashSet<String> cells = new LinkedHashSet<>();
    for (ComparedSite column : comparison.columns()) {
      cells.add(cells(rows, row -> here(row, column)));
    }
    return cells.stream().filter(cell -> !cell.equals(NOTHING)).findFirst().orElse(NOTHING);
  }

  private Optional<String> base(SubjectRow row) {
    return comparison
        .base(row.question())
        .filter(outcome -> !none(outcome))
        .map(outcome -> voice.say(row.question(), outcome));
  }

  private Optional<String> here(SubjectRow row, ComparedSite column) {
    return comparison
        .decision(row, column)
        .filter(decision -> !none(decision.proposed()))
        .map(voice::proposed);
  }

  private static String cells(List<SubjectRow> rows, Function<SubjectRow, Optional<String>> said) {
    StringBuilder cells = new StringBuilder();
    for (SubjectRow row : rows) {
      said.apply(row).ifPresent(value -> join(cells, row.cell().of(value)));
    }
    return cells.isEmpty() ? NOTHING : cells.toString();
  }

  /** A cell may bring its own comma. */
  private static void join(StringBuilder cells, String cell) {
    if (cells.isEmpty()) {
      cells.append(cell.startsWith(", ") ? cell.substring(2) : cell);
    } else {
      cells.append(cell.startsWith(",") ? "" : " ").append(cell);
    }
  }

  /** A notch or an overhang of nothing is not worth a word. */
  private static boolean none(Outcome outcome) {
    return outcome instanceof Outcome.Amount amount && !(amount.measure().amount() > 0);
  }
}
