package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
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
            : "");
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
  private static String value(String written) {
    return written.replaceAll("[\\[\\]{}]", "").replace("vine: ", "");
  }
}
