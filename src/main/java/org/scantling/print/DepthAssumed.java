package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.depths.DepthTable;
import org.scantling.design.BaseDesign;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.tables.Market;
import org.scantling.tables.Tables;
import org.scantling.words.DepthWords;
import org.scantling.words.Voice;

/** Everything that a table of hole depths rests on, in words. */
final class DepthAssumed {
  private final DepthTable table;
  private final BaseDesign design;
  private final Voice voice;
  private final DepthWords words;
  private final Tables tables;

  DepthAssumed(DepthTable table, Voice voice, DepthWords words, Tables tables) {
    this.tables = tables;
    this.table = table;
    this.design = table.request().designs().get(0);
    this.voice = voice;
    this.words = words;
  }

  List<Block.Item> items() {
    List<Block.Item> items = new ArrayList<>();
    items.add(item("assumed.structure", structure()));
    items.add(item("assumed.place", place()));
    items.add(item(hill() ? "assumed.wind.hill" : "assumed.wind", Map.of()));
    items.add(
        item(
            "assumed.timber",
            Map.of("timber", said(Question.SPECIES) + " " + said(Question.GRADE))));
    items.add(item("assumed.hold." + word(Question.FOOTING_SIDE), Map.of()));
    items.add(item("assumed.rounding", Map.of("step", words.say(step()))));
    items.add(item("assumed.code", Map.of()));
    return items;
  }

  private boolean hill() {
    return table.request().site().climate().weather().hill().isPresent();
  }

  /** Depths are rounded as the timber is sold: by the inch, or by metric steps. */
  private String step() {
    String market = tables.market(table.request().site().materials().market());
    return Market.isMetric(market) ? "step.metric" : "step.imperial";
  }

  private Map<String, String> place() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("exposure", said(Question.EXPOSURE));
    blanks.put("snow", said(Question.GROUND_SNOW));
    blanks.put("climber", said(Question.VINE));
    if (!said(Question.SIDE_FILL).isEmpty()) {
      blanks.put("fill", said(Question.SIDE_FILL));
    }
    return blanks;
  }

  private Map<String, String> structure() {
    BaseDesign.Posts posts = design.posts();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("title", design.title());
    blanks.put("rows", say(posts.rowSpacingIn()));
    blanks.put("bays", Integer.toString(posts.bays()));
    blanks.put("style", voice.option(Question.HEADER_STYLE, design.headers().style()));
    blanks.put("header", design.headers().size());
    blanks.put("crossbeam", design.crossbeams().size());
    blanks.put("spacing", said(Question.CROSSBEAM_SPACING));
    design
        .sidePanels()
        .ifPresent(panels -> blanks.put("pickets", Integer.toString(panels.pickets())));
    return blanks;
  }

  private Block.Item item(String id, Map<String, String> blanks) {
    return new Block.Item(words.cell(id), words.say(id, blanks));
  }

  private String word(Question question) {
    return table
        .answer()
        .decision(question)
        .map(each -> ((Outcome.Word) each.proposed()).text())
        .orElse(WayOfBuilding.AS_TABLED);
  }

  private String said(Question question) {
    return DepthPage.answer(table, voice, question);
  }

  private String say(double inches) {
    return voice.say(Measure.inches(inches));
  }
}
