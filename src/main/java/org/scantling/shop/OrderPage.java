package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** The order of work as a page. */
final class OrderPage {
  private static final Map<String, String> LEADS =
      Map.of(
          "hold", "HOLD",
          "safety", "Safety",
          "saving", "Saves time",
          "alone", "Working alone");

  private OrderPage() {}

  static void write(WorkOrder order, Said said, Page page) {
    page.paragraph(
        "Do not go past a HOLD until it is checked. Remarks stay with the step they belong to.");
    List<Block.Item> items = new ArrayList<>();
    for (WorkOrder.Step step : order.steps()) {
      String lead = LEADS.getOrDefault(step.part(), Integer.toString(step.number()));
      items.add(new Block.Item(lead, step.text()));
    }
    page.heading("Steps").items(items);
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("mark", "piece", "weighs, wet from the yard", "people"));
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (WorkOrder.Lift lift : order.lifts()) {
      String hands =
          lift.hands() > 2 ? "more than two, or a hoist" : Integer.toString(lift.hands());
      alike
          .computeIfAbsent(
              List.of(lift.what(), said.weight(lift.weightLb()), hands), same -> new ArrayList<>())
          .add(lift.mark());
    }
    alike.forEach(
        (same, marks) ->
            rows.add(List.of(String.join(", ", marks), same.get(0), same.get(1), same.get(2))));
    page.heading("Lifts").add(new Block.Grid(rows));
  }
}
