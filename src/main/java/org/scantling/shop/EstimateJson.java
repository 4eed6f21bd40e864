package org.scantling.shop;

import java.math.BigDecimal;
import java.util.Optional;
import org.scantling.print.JsonText;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The estimate as JSON: all of it, or what a proposal tells of it. */
public final class EstimateJson {
  private EstimateJson() {}

  /** What a proposal tells: the hours, and where there are prices the cost. */
  public static void write(Estimate estimate, ObjectNode node) {
    if (!estimate.priceList().isEmpty()) {
      cost(estimate.cost(), node.putObject("cost"));
    }
    write(estimate.work(), node);
  }

  /** The hours alone. */
  public static void write(WorkHours work, ObjectNode node) {
    node.put("workHours", work.hours().doubleValue());
  }

  /** Null where nothing is priced: a price is never made up. */
  private static void cost(Cost cost, ObjectNode node) {
    if (cost.priced()) {
      node.put("amount", cost.total());
    } else {
      node.putNull("amount");
    }
    node.put("currency", cost.currency());
    cost.without().forEach(node.putArray("without")::add);
  }

  static String builder(Estimate estimate) {
    ObjectNode root = client(estimate, JsonText.object());
    ArrayNode lines = root.putArray("lines");
    for (CostLine line : estimate.cost().lines()) {
      ObjectNode node = lines.addObject().put("item", line.key()).put("part", line.part());
      node.put("what", line.what())
          .put("quantity", line.quantity().doubleValue())
          .put("unit", line.unit());
      put(node, "price", line.price());
      put(node, "cost", line.amount());
    }
    ArrayNode work = root.putArray("work");
    estimate.work().tasks().forEach(task -> task(task, work.addObject()));
    ObjectNode sums = root.putObject("sums");
    Cost cost = estimate.cost();
    sums.put("materials", cost.sum(CostLine::goods)).put("materialsTax", cost.onMaterials());
    sums.put("labor", cost.sum(each -> each.part().equals("labor")));
    sums.put("around", cost.sum(each -> each.part().equals("around")));
    sums.put("markup", cost.markedUp()).put("tax", cost.onAll());
    return JsonText.print(root);
  }

  static String client(Estimate estimate) {
    return JsonText.print(client(estimate, JsonText.object()));
  }

  private static ObjectNode client(Estimate estimate, ObjectNode root) {
    root.put("schema", "scantling/estimate/1").put("title", estimate.title());
    cost(estimate.cost(), root.putObject("cost"));
    write(estimate.work(), root);
    return root;
  }

  private static void task(Task task, ObjectNode node) {
    node.put("task", task.id())
        .put("hours", task.hours().doubleValue())
        .put("people", task.hands());
    ArrayNode parts = node.putArray("from");
    for (Task.Part part : task.parts()) {
      ObjectNode one = parts.addObject().put("row", part.row().id());
      ListNodes.number(one, "count", part.amount());
      one.put("unit", part.row().unit());
      ListNodes.number(one, "minutes", part.row().eachMinutes());
      one.put("source", Said.source(part.row().source()));
    }
  }

  private static void put(ObjectNode node, String key, Optional<BigDecimal> amount) {
    amount.ifPresentOrElse(each -> node.put(key, each), () -> node.putNull(key));
  }
}
