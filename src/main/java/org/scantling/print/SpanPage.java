package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.spans.SpanRequest;
import org.scantling.spans.SpanRow;
import org.scantling.spans.SpanTable;
import org.scantling.spans.SpanTables;
import org.scantling.spans.TimberGrade;
import org.scantling.spans.TimberSize;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** A span table as a page: the spans first, then what the letters mean, then every assumption. */
final class SpanPage {
  private static final Sayings SAYINGS = Sayings.of("span-table");
  private static final int MOST_COLUMNS = 5;

  private final SpanTable table;
  private final SpanRequest request;
  private final Voice voice;
  private final SpanWords told;
  private final Map<String, SpanRow.Stop> letters = new LinkedHashMap<>();

  private SpanPage(SpanTable table, Words words, UnitSystem units) {
    this.table = table;
    this.request = table.request();
    this.voice = words.voice(Reader.BUILDER, units);
    this.told = new SpanWords(table, voice, units);
    table.rows().forEach(row -> letters.putIfAbsent(row.stop().id(), row.stop()));
  }

  static Page of(SpanTable table, Words words, UnitSystem units) {
    SpanPage page = new SpanPage(table, words, units);
    return page.written();
  }

  private Page written() {
    Page page = new Page();
    page.title(SAYINGS.say("title", "members", request.role().word())).paragraph(told.found());
    for (TimberGrade timber : request.timbers()) {
      page.heading(
          Sentence.capital(voice.option(Question.SPECIES, timber.species()))
              + ", "
              + voice.option(Question.GRADE, timber.grade()));
      for (List<Measure> steps : blocks()) {
        page.add(new Block.Grid(grid(timber, steps)));
      }
    }
    page.heading(SAYINGS.say("governs")).items(legend());
    page.heading(SAYINGS.say("assumed")).items(told.items());
    told.openTop().ifPresent(page::paragraph);
    return page;
  }

  private List<List<Measure>> blocks() {
    List<List<Measure>> blocks = new ArrayList<>();
    for (int from = 0; from < request.steps().size(); from += MOST_COLUMNS) {
      int to = Math.min(from + MOST_COLUMNS, request.steps().size());
      blocks.add(request.steps().subList(from, to));
    }
    return blocks;
  }

  private List<List<String>> grid(TimberGrade timber, List<Measure> steps) {
    List<List<String>> grid = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    steps.forEach(step -> head.add(told.step(step)));
    grid.add(head);
    for (TimberSize size : request.sizes()) {
      List<String> line = new ArrayList<>(List.of(size.name()));
      steps.forEach(step -> line.add(cell(table.row(timber, size, step))));
      grid.add(line);
    }
    return grid;
  }

  private String cell(SpanRow row) {
    return row.reach().map(told::reach).orElseGet(() -> SAYINGS.say("none"))
        + " "
        + letter(row.stop().id());
  }

  private String letter(String id) {
    return Character.toString('a' + List.copyOf(letters.keySet()).indexOf(id));
  }

  private List<Block.Item> legend() {
    List<Block.Item> items = new ArrayList<>();
    letters.forEach((id, stop) -> items.add(new Block.Item(letter(id), meaning(stop))));
    return items;
  }

  private String meaning(SpanRow.Stop stop) {
    String source = stop.source().map(each -> " (" + voice.source(each) + ")").orElse("");
    return stop.id().equals(SpanTables.NO_VALUES)
        ? SAYINGS.say("no-values")
        : voice.check(stop.id()) + source;
  }
}
