package org.scantling.print;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.depths.DepthCase;
import org.scantling.depths.DepthRow;
import org.scantling.depths.DepthTable;
import org.scantling.design.BaseDesign;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Hole depths for programs. */
public final class DepthJson {
  private static final String SCHEMA = "scantling/depths/1";

  private DepthJson() {}

  /**
   * @param choice how the base of a site was chosen, where several were named
   */
  public static String of(DepthTable table, Words words, Optional<BaseChoice> choice) {
    ObjectNode node = JsonText.object();
    node.put("schema", SCHEMA);
    node.put("status", "answered");
    BasesJson.put(node, choice, words);
    node.set("assumptions", assumptions(table));
    table.here().ifPresent(here -> node.set("here", row(here.row())));
    ArrayNode rows = node.putArray("rows");
    if (table.rows().isEmpty()) {
      table.here().ifPresent(here -> rows.add(row(here.row())));
    }
    table.rows().forEach(row -> rows.add(row(row)));
    return JsonText.print(node);
  }

  /** Of a site for which there is no structure. */
  public static String refused() {
    ObjectNode node = JsonText.object();
    node.put("schema", SCHEMA);
    node.put("status", "needs-engineer");
    node.set("assumptions", JsonText.object());
    node.putArray("rows");
    return JsonText.print(node);
  }

  private static ObjectNode assumptions(DepthTable table) {
    BaseDesign design = table.request().designs().get(0);
    ObjectNode node = JsonText.object();
    node.put("title", table.request().site().title());
    word(node, "exposure", table, Question.EXPOSURE);
    word(node, "vine", table, Question.VINE);
    word(node, "species", table, Question.SPECIES);
    word(node, "grade", table, Question.GRADE);
    number(node, "groundSnowPsf", table, Question.GROUND_SNOW);
    number(node, "sideFillRatio", table, Question.SIDE_FILL);
    word(node, "soilHold", table, Question.FOOTING_SIDE);
    node.put("footing", design.posts().footing());
    node.put("rowSpacingIn", JsonText.rounded(design.posts().rowSpacingIn()));
    node.put("bays", design.posts().bays());
    node.put("headerStyle", design.headers().style());
    node.put("header", design.headers().size());
    node.put("crossbeam", design.crossbeams().size());
    node.put("crossbeamCount", design.crossbeams().count());
    node.put("braces", design.braces().isPresent());
    return node;
  }

  private static void word(ObjectNode node, String key, DepthTable table, Question question) {
    table
        .answer()
        .decision(question)
        .ifPresent(each -> node.put(key, ((Outcome.Word) each.proposed()).text()));
  }

  private static void number(ObjectNode node, String key, DepthTable table, Question question) {
    table
        .answer()
        .decision(question)
        .map(each -> ((Outcome.Amount) each.proposed()).measure().amount())
        .ifPresent(amount -> node.put(key, JsonText.rounded(amount)));
  }

  private static ObjectNode row(DepthRow row) {
    DepthCase at = row.at();
    ObjectNode node = JsonText.object();
    node.put("post", at.post());
    node.put("fill", at.fill());
    node.put("soil", at.soil());
    node.put("bayIn", JsonText.rounded(at.bayIn()));
    node.put("heightIn", JsonText.rounded(at.heightIn()));
    node.put("windSpeedMph", JsonText.rounded(at.windSpeedMph()));
    node.put("frostDepthIn", JsonText.rounded(at.frostDepthIn()));
    number(node, "depthIn", row.depthIn());
    number(node, "diameterIn", row.diameterIn());
    node.put("governs", row.governs());
    node.put("source", row.source().text());
    return node;
  }

  private static void number(ObjectNode node, String key, OptionalDouble number) {
    if (number.isPresent()) {
      node.put(key, JsonText.rounded(number.getAsDouble()));
    } else {
      node.putNull(key);
    }
  }
}
