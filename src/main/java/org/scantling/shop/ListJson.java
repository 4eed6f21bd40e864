package org.scantling.shop;

import org.scantling.print.JsonText;
import org.scantling.quantity.UnitSystem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The lists as JSON for programs: inches, pounds and cubic feet whatever people read, and beside
 * them millimetres, kilograms and cubic metres where the job is metric.
 */
public final class ListJson {
  private ListJson() {}

  /**
   * One list.
   *
   * @param units in which people read it
   */
  public static String of(Lists lists, ListKind kind, UnitSystem units) {
    ObjectNode root = JsonText.object();
    root.put("schema", "scantling/" + kind.word() + "/1");
    root.put("title", lists.title());
    switch (kind) {
      case CUT_LIST -> CutListJson.write(lists, root);
      case BUYING -> BuyingJson.write(lists.buying(), lists.priced(), root);
      case SET_OUT -> SetOutJson.write(lists.setOut(), root);
      case ORDER -> order(lists.order(units), root);
      case CLIMBERS -> climbers(lists.climbers(), root);
      case UPKEEP -> upkeep(lists.upkeep(units), root);
    }
    if (units == UnitSystem.METRIC) {
      MetricKeys.add(root);
    }
    return JsonText.print(root);
  }

  private static void order(WorkOrder order, ObjectNode root) {
    ArrayNode steps = root.putArray("steps");
    for (WorkOrder.Step step : order.steps()) {
      steps
          .addObject()
          .put("step", step.number())
          .put("part", step.part())
          .put("text", step.text())
          .put("source", Said.source(step.source()));
    }
    ArrayNode lifts = root.putArray("lifts");
    for (WorkOrder.Lift lift : order.lifts()) {
      ObjectNode node = lifts.addObject().put("mark", lift.mark()).put("piece", lift.what());
      ListNodes.number(node, "weightLb", lift.weightLb());
      node.put("hands", lift.hands());
    }
  }

  private static void upkeep(Upkeep upkeep, ObjectNode root) {
    ArrayNode care = root.putArray("care");
    for (Upkeep.Care each : upkeep.care()) {
      care.addObject()
          .put("season", each.season())
          .put("text", each.text())
          .put("source", Said.source(each.source()));
    }
  }

  private static void climbers(Climbers climbers, ObjectNode root) {
    ArrayNode plants = root.putArray("plants");
    for (Climbers.Plant plant : climbers.plants()) {
      ObjectNode node = plants.addObject().put("post", plant.post()).put("climber", plant.vine());
      ListNodes.number(node, "offIn", plant.offIn());
    }
    ArrayNode runs = root.putArray("wires");
    for (Climbers.WireRun run : climbers.runs()) {
      ObjectNode node = runs.addObject().put("where", run.where()).put("way", run.way());
      node.put("climber", run.vine());
      node.put("wire", run.parts().wire()).put("eye", run.parts().eye());
      node.put("wires", run.wires());
      ListNodes.numbers(
          node, run.way().equals("level") ? "heightsIn" : "placesIn", run.heightsIn());
      ListNodes.number(node, "lengthIn", run.lengthIn());
      node.put("eyes", run.eyes()).put("holes", run.holes()).put("times", run.times());
    }
    ListNodes.number(root, "wireIn", climbers.wireIn());
    root.put("eyes", climbers.eyes()).put("holes", climbers.holes());
    ListNodes.words(root, "words", climbers.words());
  }
}
