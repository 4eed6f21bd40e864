package org.scantling.print;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.depths.DepthCase;
import org.scantling.depths.DepthRow;
import org.scantling.depths.DepthTable;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.tables.Tables;
import org.scantling.words.DepthWords;
import org.scantling.words.Voice;

/** The answer to "how deep here": the depth, why, what else asks for how much, and what to mind. */
final class DepthHere {
  private final DepthTable table;
  private final Tables tables;
  private final Voice voice;
  private final DepthWords words;

  DepthHere(DepthTable table, Tables tables, Voice voice, DepthWords words) {
    this.table = table;
    this.tables = tables;
    this.voice = voice;
    this.words = words;
  }

  String title() {
    return words.say("title.site", Map.of("title", table.request().site().title()));
  }

  void write(Page page, DepthTable.Here here) {
    page.paragraph(answer(here.row()));
    here.row().decision().ifPresent(decision -> page.items(asks(decision)));
    List<Block.Item> cautions =
        here.cautions().stream()
            .filter(this::ofHoles)
            .map(each -> new Block.Item("", voice.sentence(each)))
            .toList();
    page.heading(words.say("cautions")).items(cautions);
  }

  private String answer(DepthRow row) {
    Map<String, String> blanks = blanks(row.at());
    if (row.depthIn().isPresent()) {
      Decision decision = row.decision().orElseThrow();
      blanks.put("depth", say(row.depthIn().getAsDouble()));
      row.diameterIn().ifPresent(width -> blanks.put("width", say(width)));
      blanks.put("why", voice.sentence(decision.governing(), decision));
      return words.say("here", blanks);
    }
    if (row.refusal().isPresent()) {
      return words.say("here.refused", Map.of("why", voice.sentence(row.refusal().get())));
    }
    blanks.putAll(limits());
    blanks.put("helps", helps(row.at()));
    if (row.weakPost()) {
      blanks.put("check", voice.check(row.governs()));
      return words.say("here.post", blanks);
    }
    return words.say("here.deepest", blanks);
  }

  /** What could be done where no hole does. */
  String helps(DepthCase at) {
    boolean filled = at.fill().equals(WayOfBuilding.CONCRETE);
    return words.say(piers() ? "helps.piers" : filled ? "helps.concrete" : "helps.soil");
  }

  private boolean piers() {
    return !DepthCase.inTheGround(table.request().design().posts());
  }

  /** Every rule that asked for a least depth, but for the one that is told already. */
  private List<Block.Item> asks(Decision decision) {
    return decision.reasons().stream()
        .filter(each -> !each.governing() && each.finding() instanceof Finding.AtLeast)
        .filter(each -> ((Finding.AtLeast) each.finding()).number() > 0)
        .map(each -> new Block.Item(ask(each), voice.sentence(each, decision)))
        .toList();
  }

  private String ask(Reason reason) {
    return Sentence.capital(words.cell(reason.note().id()));
  }

  /** Only what is about holes, the ground and the numbers of the place. */
  private boolean ofHoles(Reason caution) {
    Evidence evidence = caution.finding().evidence();
    List<String> told = List.of(tables.defaults().row("depths.cautions").word().split(" "));
    return evidence.rows().stream().anyMatch(row -> told.contains(row.id()));
  }

  /** What a word in the table means. */
  String meaning(DepthRow row) {
    return row.refusal()
        .map(voice::sentence)
        .orElseGet(() -> words.say(DepthPage.word(row), limits()));
  }

  private Map<String, String> limits() {
    return Map.of("deepest", say(tables.thumb("footing.deepest").amount()));
  }

  Map<String, String> blanks(DepthCase at) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("post", at.post());
    blanks.put("height", say(at.heightIn()));
    blanks.put("bay", bay(at));
    blanks.put("soil", voice.option(Question.SOIL, at.soil()));
    String fill = voice.option(Question.FOOTING_BACKFILL, at.fill());
    blanks.put("stand", words.say(piers() ? "stand.piers" : "stand.ground", Map.of("fill", fill)));
    blanks.put("wind", voice.say(Measure.mph(at.windSpeedMph())));
    blanks.put("frost", at.frostDepthIn() > 0 ? say(at.frostDepthIn()) : words.say("none"));
    return blanks;
  }

  /** Where bays are not alike, what the longest of them is. */
  private String bay(DepthCase at) {
    String longest = say(at.bayIn());
    boolean even = table.request().design().posts().along().even();
    return even ? longest : words.say("bay.longest", Map.of("bay", longest));
  }

  private String say(double inches) {
    return voice.say(Measure.inches(inches));
  }
}
