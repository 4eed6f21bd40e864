package org.scantling.shop;

import java.util.OptionalLong;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The buying list as JSON. */
final class BuyingJson {
  private BuyingJson() {}

  /**
   * @param priced whether a list says what things cost, by the names of its items
   */
  static void write(Buying buying, boolean priced, ObjectNode root) {
    ObjectNode totals = root.putObject("totals");
    totals.put("pieces", buying.totals().pieces()).put("sticks", buying.totals().sticks());
    ListNodes.number(totals, "wasteRatio", buying.totals().wasteRatio());
    ListNodes.number(totals, "weightLb", buying.totals().weightLb());
    ListNodes.number(totals, "deliveryLb", buying.totals().deliveryLb());
    money(totals, "timberCost", buying.totals().timberCents());
    ArrayNode lines = root.putArray("lines");
    for (BuyingLine each : buying.lines()) {
      ObjectNode node = lines.addObject();
      if (priced) {
        node.put("key", each.key().text());
      }
      line(each, node);
    }
    ArrayNode savings = root.putArray("savings");
    for (Saving each : buying.savings()) {
      ObjectNode node = savings.addObject().put("what", each.what()).put("size", each.size());
      ListNodes.number(node, "fromIn", each.fromIn());
      ListNodes.number(node, "toIn", each.toIn());
      ListNodes.number(node, "lengthIn", each.lengthIn());
      node.put("joint", each.joint());
      money(node, "cost", each.cents());
    }
    ArrayNode timber = root.putArray("sawing");
    buying.timber().forEach(each -> plan(each, timber.addObject()));
  }

  /** Null where the yard's list says nothing: a price is never made up. */
  private static void money(ObjectNode node, String key, OptionalLong cents) {
    if (cents.isPresent()) {
      node.put(key, cents.getAsLong() / 100.0);
    } else {
      node.putNull(key);
    }
  }

  private static void line(BuyingLine line, ObjectNode node) {
    node.put("section", line.section()).put("item", line.item());
    node.put("buy", line.bought()).put("unit", line.unit());
    ListNodes.number(node, "needed", line.needed().amount());
    ListNodes.number(node, "spare", line.spare().amount());
    node.put("quantityUnit", line.needed().unit()).put("for", line.use());
    money(node, "cost", line.cents());
    word(node, "treatment", line.kind().treatment());
    word(node, "timber", line.kind().timber());
    word(node, "finish", line.kind().finish());
    line.kind()
        .rating()
        .ifPresent(
            rating -> {
              ListNodes.number(node, "ratedLiftLb", rating.liftLb());
              ListNodes.number(node, "ratedSideLb", rating.sideLb());
              ListNodes.number(node, "ratedDownLb", rating.downLb());
            });
  }

  private static void word(ObjectNode node, String key, String word) {
    if (!word.isEmpty()) {
      node.put(key, word);
    }
  }

  private static void plan(TimberPlan plan, ObjectNode node) {
    TimberPlan.Result result = plan.result();
    node.put("size", plan.stock().size()).put("forTheGround", plan.stock().forTheGround());
    node.put("species", plan.stock().timber().species());
    node.put("grade", plan.stock().timber().grade());
    node.put("objective", result.byCost() ? "cost" : "length");
    node.put("proven", result.proven());
    node.put("gapRatio", result.gapRatio());
    ListNodes.number(node, "wasteRatio", result.wasteRatio());
    ListNodes.number(node, "piecesIn", result.piecesIn());
    ListNodes.number(node, "boughtIn", result.boughtIn());
    money(node, "cost", result.cents());
    ArrayNode cuts = node.putArray("sticks");
    for (StickCut cut : plan.cuts()) {
      ObjectNode one = cuts.addObject();
      ListNodes.number(one, "lengthIn", cut.lengthIn());
      one.put("count", cut.times());
      ListNodes.words(one, "pieces", cut.marks());
    }
    ArrayNode spare = node.putArray("spare");
    for (TimberPlan.Spare each : plan.spare()) {
      ObjectNode one = spare.addObject();
      ListNodes.number(one, "lengthIn", each.lengthIn());
      one.put("count", each.count());
    }
    ArrayNode special = node.putArray("special");
    for (TimberPlan.Special each : plan.special()) {
      ObjectNode one = special.addObject().put("mark", each.mark());
      ListNodes.number(one, "lengthIn", each.lengthIn());
      one.put("count", each.count());
    }
  }
}
