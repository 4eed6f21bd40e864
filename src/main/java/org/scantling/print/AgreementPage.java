package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.ThumbRange;
import org.scantling.words.Voice;

/** Thumb against calculation over a grid of sites: a table, a map of each rule, what it means. */
final class AgreementPage {
  private final Agreement agreement;
  private final Voice voice;

  private AgreementPage(Agreement agreement, Voice voice) {
    this.agreement = agreement;
    this.voice = voice;
  }

  static Page of(Agreement agreement, Voice voice) {
    return new AgreementPage(agreement, voice).page();
  }

  private Page page() {
    Page page = new Page().title("Thumb against calculation");
    page.paragraph(summary());
    page.add(new Block.Grid(table()));
    page.heading("Where a thumb alone does not ask for enough").items(shortItems());
    pictures(page);
    page.heading("How often, by demand");
    page.paragraph(
        "Of ten sites with that value, on how many the thumb alone does not ask for enough (. for"
            + " none).");
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      page.add(new Block.Grid(map(axis)));
    }
    page.heading("Grid").items(grid());
    return page;
  }

  private String summary() {
    long unsafe =
        agreement.rules().stream()
            .filter(rule -> agreement.count(rule, Standing.NOT_ENOUGH) > 0)
            .count();
    int tried = agreement.sites() - agreement.without();
    return unsafe
        + " of "
        + agreement.rules().size()
        + " rules of thumb do not ask for enough somewhere on "
        + tried
        + " sites. None of them is relied on alone: the answer is always the larger of thumb and"
        + " calculation."
        + (agreement.without() > 0
            ? " On " + agreement.without() + " more sites there is no structure."
            : "")
        + " "
        + inside();
  }

  /** What is said of ranges must hold on the grid that is tried. */
  private String inside() {
    List<String> failing =
        agreement.rules().stream()
            .filter(rule -> agreement.inside(rule, Standing.NOT_ENOUGH) > 0)
            .toList();
    return failing.isEmpty()
        ? "Inside the range in which a rule says that it may be relied on alone, none falls short."
        : "Inside the range in which it says that it may be relied on alone there falls short: "
            + Sentence.list(failing)
            + ".";
  }

  private void pictures(Page page) {
    AgreementMap map = new AgreementMap(agreement);
    page.heading("Pictures, and where each may be relied on alone");
    page.paragraph(legend());
    for (String rule : agreement.rules()) {
      if (agreement.count(rule, Standing.NOT_ENOUGH) > 0) {
        page.paragraph(rule + ": " + range(rule));
        page.add(new Block.Picture(map.of(rule)));
      }
    }
  }

  private String legend() {
    List<String> axes = new ArrayList<>();
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      axes.add(name(axis));
    }
    int split = axes.size() / 2;
    return "One sign a site: "
        + AgreementMap.SAFER
        + " the thumb asks for more than the calculation, "
        + AgreementMap.EQUAL
        + " for the same, "
        + AgreementMap.NOT_ENOUGH
        + " for less; blank where there is no structure. Down the side "
        + Sentence.list(axes.subList(0, split))
        + "; across "
        + Sentence.list(axes.subList(split, axes.size()))
        + ", the last of them innermost, all from mild to hard.";
  }

  private String range(String rule) {
    ThumbRange range = agreement.range(rule).orElse(null);
    if (range == null) {
      return "says no range.";
    }
    if (range.most().isEmpty()) {
      return "never to be relied on alone: " + range.reason() + ".";
    }
    List<String> ends = new ArrayList<>();
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      String path = agreement.axes().get(axis).path();
      if (range.ends(agreement.axes()).contains(path)) {
        ends.add(name(axis) + " " + value(Objects.requireNonNull(range.most().get().get(path))));
      }
    }
    return "alone only "
        + (ends.isEmpty() ? "on this grid" : "up to " + Sentence.list(ends))
        + ", where it falls short on "
        + agreement.inside(rule, Standing.NOT_ENOUGH)
        + " of "
        + agreement.inside(rule)
        + " sites: "
        + range.reason()
        + ".";
  }

  private List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Rule of thumb", "speaks", "safer", "equal", "not enough"));
    for (String rule : agreement.rules()) {
      rows.add(
          List.of(
              rule,
              Long.toString(agreement.spoke(rule)),
              Long.toString(agreement.count(rule, Standing.SAFER)),
              Long.toString(agreement.count(rule, Standing.EQUAL)),
              Long.toString(agreement.count(rule, Standing.NOT_ENOUGH))));
    }
    return rows;
  }

  private List<Block.Item> shortItems() {
    List<Block.Item> items = new ArrayList<>();
    for (String rule : agreement.rules()) {
      agreement
          .firstShort(rule)
          .ifPresent(
              first ->
                  items.add(
                      new Block.Item(
                          rule,
                          "first, and mildest, on "
                              + String.join(", ", told(first.site()))
                              + ": "
                              + said(first.trial().thumb())
                              + " by thumb, "
                              + said(first.trial().calculated())
                              + " by calculation.")));
    }
    if (items.isEmpty()) {
      items.add(new Block.Item("", "nowhere on this grid."));
    }
    return items;
  }

  private static String said(String answer) {
    return answer.equals("0\"") ? "nothing" : answer;
  }

  private List<String> told(List<String> site) {
    List<String> told = new ArrayList<>();
    for (int axis = 0; axis < site.size(); axis++) {
      told.add(name(axis) + " " + value(site.get(axis)));
    }
    return told;
  }

  private List<List<String>> map(int axis) {
    Grid.Axis line = agreement.axes().get(axis);
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(Sentence.capital(name(axis))));
    line.values().forEach(value -> head.add(value(value)));
    rows.add(head);
    for (String rule : agreement.rules()) {
      if (agreement.count(rule, Standing.NOT_ENOUGH) > 0) {
        List<String> row = new ArrayList<>(List.of(rule));
        for (String value : line.values()) {
          Optional<Long> tenths = agreement.tenths(rule, axis, value, Standing.NOT_ENOUGH);
          row.add(tenths.map(each -> each == 0 ? "." : Long.toString(each)).orElse(" "));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  private List<Block.Item> grid() {
    List<Block.Item> items = new ArrayList<>();
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      Grid.Axis line = agreement.axes().get(axis);
      items.add(
          new Block.Item(
              name(axis),
              line.values().stream().map(AgreementPage::value).collect(Collectors.joining(", "))
                  + " ("
                  + line.path()
                  + ")."));
    }
    return items;
  }

  private String name(int axis) {
    return voice.path(agreement.axes().get(axis).path());
  }

  /** A list of one climber is that climber. */
  static String value(String written) {
    return written.replaceAll("[\\[\\]{}]", "").replace("vine: ", "");
  }
}
