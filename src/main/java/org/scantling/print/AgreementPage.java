package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.ThumbRange;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** Thumb against calculation over a grid of sites: a table, a map of each rule, what it means. */
final class AgreementPage {
  private static final Sayings SAYINGS = Sayings.of("agreement");

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
    Page page = new Page().title(SAYINGS.say("title"));
    page.paragraph(summary());
    page.add(new Block.Grid(table()));
    page.heading(SAYINGS.say("short.heading")).items(shortItems());
    pictures(page);
    page.heading(SAYINGS.say("often.heading"));
    page.paragraph(SAYINGS.say("often"));
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      page.add(new Block.Grid(map(axis)));
    }
    page.heading(SAYINGS.say("grid")).items(grid());
    return page;
  }

  private String summary() {
    long unsafe =
        agreement.rules().stream()
            .filter(rule -> agreement.count(rule, Standing.NOT_ENOUGH) > 0)
            .count();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("short", Long.toString(unsafe));
    blanks.put("rules", Integer.toString(agreement.rules().size()));
    blanks.put("sites", Integer.toString(agreement.sites() - agreement.without()));
    if (agreement.without() > 0) {
      blanks.put("without", Integer.toString(agreement.without()));
    }
    blanks.put("inside", inside());
    return SAYINGS.say("summary", blanks);
  }

  /** What is said of ranges must hold on the grid that is tried. */
  private String inside() {
    List<String> failing =
        agreement.rules().stream()
            .filter(rule -> agreement.inside(rule, Standing.NOT_ENOUGH) > 0)
            .toList();
    return failing.isEmpty()
        ? SAYINGS.say("inside.none")
        : SAYINGS.say("inside", "rules", Sentence.list(failing));
  }

  private void pictures(Page page) {
    AgreementMap map = new AgreementMap(agreement);
    page.heading(SAYINGS.say("pictures.heading"));
    page.paragraph(legend());
    for (String rule : agreement.rules()) {
      if (agreement.count(rule, Standing.NOT_ENOUGH) > 0) {
        page.paragraph(range(rule));
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
    return SAYINGS.say(
        "pictures",
        Map.of(
            "more", AgreementMap.SAFER,
            "same", AgreementMap.EQUAL,
            "less", AgreementMap.NOT_ENOUGH,
            "down", Sentence.list(axes.subList(0, split)),
            "across", Sentence.list(axes.subList(split, axes.size()))));
  }

  private String range(String rule) {
    ThumbRange range = agreement.range(rule).orElse(null);
    if (range == null) {
      return SAYINGS.say("range.none", "rule", rule);
    }
    if (range.most().isEmpty()) {
      return SAYINGS.say("range.never", "rule", rule, "reason", range.reason());
    }
    List<String> ends = new ArrayList<>();
    for (int axis = 0; axis < agreement.axes().size(); axis++) {
      String path = agreement.axes().get(axis).path();
      if (range.ends(agreement.axes()).contains(path)) {
        ends.add(
            name(axis)
                + " "
                + AgreementMap.value(Objects.requireNonNull(range.most().get().get(path))));
      }
    }
    return SAYINGS.say(
        ends.isEmpty() ? "range.grid" : "range",
        Map.of(
            "rule", rule,
            "ends", Sentence.list(ends),
            "short", Long.toString(agreement.inside(rule, Standing.NOT_ENOUGH)),
            "sites", Long.toString(agreement.inside(rule)),
            "reason", range.reason()));
  }

  private List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            SAYINGS.say("column.rule"),
            SAYINGS.say("column.speaks"),
            SAYINGS.say("column.safer"),
            SAYINGS.say("column.equal"),
            SAYINGS.say("column.not-enough")));
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
      agreement.firstShort(rule).ifPresent(first -> items.add(new Block.Item(rule, first(first))));
    }
    if (items.isEmpty()) {
      items.add(new Block.Item("", SAYINGS.say("short.none")));
    }
    return items;
  }

  private String first(Agreement.Placed first) {
    return SAYINGS.say(
        "short",
        "site",
        String.join(", ", told(first.site())),
        "thumb",
        said(first.trial().thumb()),
        "calculated",
        said(first.trial().calculated()));
  }

  private static String said(String answer) {
    return answer.equals("0\"") ? SAYINGS.say("nothing") : answer;
  }

  private List<String> told(List<String> site) {
    List<String> told = new ArrayList<>();
    for (int axis = 0; axis < site.size(); axis++) {
      told.add(name(axis) + " " + AgreementMap.value(site.get(axis)));
    }
    return told;
  }

  private List<List<String>> map(int axis) {
    Grid.Axis line = agreement.axes().get(axis);
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(Sentence.capital(name(axis))));
    line.values().forEach(value -> head.add(AgreementMap.value(value)));
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
              line.values().stream().map(AgreementMap::value).collect(Collectors.joining(", "))
                  + " ("
                  + line.path()
                  + ")."));
    }
    return items;
  }

  private String name(int axis) {
    return voice.path(agreement.axes().get(axis).path());
  }
}
