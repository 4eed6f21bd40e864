package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.depths.DepthRequest;
import org.scantling.depths.DepthRow;
import org.scantling.depths.DepthTable;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.words.DepthWords;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Hole depths as a page: the answer for one place first, what it rests on, then the tables. */
public final class DepthPage {
  private static final int MOST_COLUMNS = 5;
  private static final String POST = "post";
  private static final String REFUSED = "refused";

  private final DepthTable table;
  private final DepthRequest request;
  private final Voice voice;
  private final DepthWords words;
  private final DepthHere here;
  private final DepthAssumed assumed;
  private final Map<String, DepthRow> governing = new LinkedHashMap<>();

  private DepthPage(DepthTable table, Words words, UnitSystem units) {
    this.table = table;
    this.request = table.request();
    this.voice = words.voice(Reader.BUILDER, units);
    this.words = DepthWords.read(units);
    this.here = new DepthHere(table, words.tables(), voice, this.words);
    this.assumed = new DepthAssumed(table, voice, this.words, words.tables());
    table.rows().forEach(row -> governing.putIfAbsent(word(row), row));
  }

  public static Page of(DepthTable table, Words words, UnitSystem units) {
    return new DepthPage(table, words, units).written();
  }

  private Page written() {
    Page page = new Page();
    page.title(here.title());
    table.here().ifPresent(each -> here.write(page, each));
    page.heading(words.say("assumed")).items(assumed.items());
    request.stands().stream()
        .filter(each -> !table.rows().isEmpty())
        .forEach(each -> add(page, each));
    if (!table.rows().isEmpty()) {
      page.heading(words.say("governs")).items(legend());
    }
    table.rows().stream()
        .filter(row -> row.depthIn().isEmpty() && row.refusal().isEmpty())
        .findFirst()
        .ifPresent(row -> page.heading(words.say("helps.heading")).paragraph(here.helps(row.at())));
    return page;
  }

  private void add(Page page, DepthRequest.Stand stand) {
    page.heading(
        words.say(
            "table", here.blanks(stand.at(request.windsMph().get(0), request.frostsIn().get(0)))));
    for (int from = 0; from < request.frostsIn().size(); from += MOST_COLUMNS) {
      int to = Math.min(from + MOST_COLUMNS, request.frostsIn().size());
      page.add(new Block.Grid(grid(stand, request.frostsIn().subList(from, to))));
    }
  }

  private List<List<String>> grid(DepthRequest.Stand stand, List<Double> frostsIn) {
    List<List<String>> grid = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    frostsIn.forEach(frost -> head.add(frost(frost)));
    grid.add(head);
    for (double wind : request.windsMph()) {
      List<String> line = new ArrayList<>(List.of(voice.say(Measure.mph(wind))));
      frostsIn.forEach(frost -> line.add(cell(table.row(stand.at(wind, frost)))));
      grid.add(line);
    }
    return grid;
  }

  private String frost(double depthIn) {
    return depthIn > 0
        ? words.say("frost.some", Map.of("frost", voice.say(Measure.inches(depthIn))))
        : words.say("frost.none");
  }

  private String cell(DepthRow row) {
    String word = words.cell(word(row));
    return row.depthIn().isPresent()
        ? voice.say(Measure.inches(row.depthIn().getAsDouble())) + " " + word
        : words.say("none") + ": " + word;
  }

  static String word(DepthRow row) {
    return row.refusal().isPresent() ? REFUSED : row.weakPost() ? POST : row.governs();
  }

  private List<Block.Item> legend() {
    List<Block.Item> items = new ArrayList<>();
    governing.forEach(
        (id, row) ->
            items.add(
                new Block.Item(
                    words.cell(id),
                    here.meaning(row)
                        + (id.equals(POST) ? "" : " (" + voice.source(row.source()) + ")"))));
    return items;
  }

  /** How a question of the first structure was answered. */
  static String answer(DepthTable table, Voice voice, Question question) {
    return table
        .answer()
        .decision(question)
        .map(each -> voice.say(question, each.proposed()))
        .orElse("");
  }
}
