package org.scantling.print;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.SpanRow;
import org.scantling.spans.SpanTable;
import org.scantling.spans.TimberGrade;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A span table for programs; lengths are cut off after a thousandth, never rounded up. */
public final class SpanJson {
  private final SpanTable table;

  private SpanJson(SpanTable table) {
    this.table = table;
  }

  public static String of(SpanTable table) {
    return JsonText.print(new SpanJson(table).whole());
  }

  /** One table as it is; several under one head. */
  public static String of(List<SpanTable> tables) {
    if (tables.size() == 1) {
      return of(tables.get(0));
    }
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/spans/1");
    ArrayNode all = node.putArray("tables");
    tables.forEach(table -> all.add(new SpanJson(table).whole()));
    return JsonText.print(node);
  }

  private ObjectNode whole() {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/spans/1");
    node.put("role", table.request().role().word());
    node.set("assumptions", assumptions());
    ArrayNode rows = node.putArray("rows");
    table.rows().forEach(row -> rows.add(row(row)));
    return node;
  }

  private ObjectNode row(SpanRow row) {
    ObjectNode node = JsonText.object();
    node.put("species", row.timber().species());
    node.put("grade", row.timber().grade());
    node.put("size", row.size().name());
    node.put(stepKey(table), JsonText.rounded(row.step().amount()));
    row.reach()
        .ifPresentOrElse(
            reach -> node.put(reachKey(table), cut(reach.amount())),
            () -> node.putNull(reachKey(table)));
    node.put("governs", row.stop().id());
    node.put("combination", row.stop().worked().map(Checked::combination).orElse(""));
    node.put("source", row.stop().source().map(Source::text).orElse(""));
    return node;
  }

  static String stepKey(SpanTable table) {
    if (table.request().role() == Role.CROSSBEAMS) {
      return "spacingIn";
    }
    Unit unit = table.request().steps().get(0).unit();
    return table.request().byHeight()
        ? "heightIn"
        : unit == Unit.INCH ? "tributaryIn" : "tributaryFt2";
  }

  static String reachKey(SpanTable table) {
    if (table.request().role() != Role.POSTS) {
      return "spanIn";
    }
    return table.request().byHeight() ? "tributaryFt2" : "heightIn";
  }

  static double cut(double amount) {
    return Math.floor(amount * THOUSAND) / THOUSAND;
  }

  /** Everything the spans rest on. */
  static ObjectNode assumptions(SpanTable table) {
    return new SpanJson(table).assumptions();
  }

  private ObjectNode assumptions() {
    Assumptions assumed = table.request().assumptions();
    ObjectNode node = JsonText.object();
    words(node, "species", TimberGrade::species);
    words(node, "grade", TimberGrade::grade);
    loads(node, assumed.loads());
    node.put("service", assumed.use().wet() ? "wet" : "dry");
    node.put("incised", assumed.use().incised());
    node.put("repetitive", assumed.use().repetitiveFactor() > 1);
    node.put("repetitiveFactor", assumed.use().repetitiveFactor());
    if (table.request().role() == Role.POSTS) {
      node.put("top", assumed.post().topHeld() ? "held" : "free");
      node.put("eccentricityRatio", JsonText.rounded(assumed.post().eccentricityRatio()));
      node.put("pushLb", JsonText.rounded(assumed.post().pushLb()));
    } else {
      beam(node, assumed);
    }
    ArrayNode values = node.putArray("designValues");
    table.values().stream().map(Source::text).forEach(values::add);
    return node;
  }

  private void words(ObjectNode node, String key, Function<TimberGrade, String> word) {
    List<String> words = table.request().timbers().stream().map(word).distinct().toList();
    if (words.size() == 1) {
      node.put(key, words.get(0));
    } else {
      words.forEach(node.putArray(key)::add);
    }
  }

  private static void loads(ObjectNode node, Assumptions.Loads loads) {
    node.put("deadPsf", JsonText.rounded(loads.deadPsf()));
    node.put("livePsf", JsonText.rounded(loads.livePsf()));
    node.put("loadDuration", JsonText.rounded(loads.durationFactor()));
    node.put("personLb", JsonText.rounded(loads.personLb()));
    node.put("ownWeight", loads.ownWeightAdded() ? "added" : "included");
  }

  private static void beam(ObjectNode node, Assumptions assumed) {
    divisor(node, "deflectionLive", assumed.sag().liveDivisor());
    divisor(node, "deflectionTotal", assumed.sag().totalDivisor());
    node.put("creepFactor", JsonText.rounded(assumed.sag().creepFactor()));
    node.put("notchIn", JsonText.rounded(assumed.beam().notchIn()));
    node.put("supportIn", JsonText.rounded(assumed.beam().supportIn()));
    node.put("topEdge", assumed.beam().heldAlong() ? "held" : "free");
    node.put("spans", assumed.beam().spanCount());
    node.put("shear", assumed.beam().shearOneDepthAway() ? "depth" : "support");
    node.put("plies", assumed.beam().apart() ? "apart" : "together");
  }

  private static void divisor(ObjectNode node, String key, OptionalDouble divisor) {
    if (divisor.isPresent()) {
      node.put(key, JsonText.rounded(divisor.getAsDouble()));
    } else {
      node.putNull(key);
    }
  }

  private static final double THOUSAND = 1000;
}
