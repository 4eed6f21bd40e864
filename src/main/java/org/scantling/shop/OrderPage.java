package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** The order of work as a page. */
final class OrderPage {
  private static final Sayings SAYINGS = Sayings.of("order");

  private OrderPage() {}

  static void write(WorkOrder order, Said said, Page page) {
    page.paragraph(SAYINGS.say("opening"));
    List<Block.Item> items = new ArrayList<>();
    for (WorkOrder.Step step : order.steps()) {
      items.add(new Block.Item(lead(step), step.text()));
    }
    page.heading(SAYINGS.say("steps.heading")).items(items);
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "mark", "piece", "weight", "people"));
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (WorkOrder.Lift lift : order.lifts()) {
      String hands = lift.hands() > 2 ? SAYINGS.say("lift.more") : Integer.toString(lift.hands());
      alike
          .computeIfAbsent(
              List.of(lift.what(), said.weight(lift.weightLb()), hands), same -> new ArrayList<>())
          .add(lift.mark());
    }
    alike.forEach(
        (same, marks) ->
            rows.add(List.of(String.join(", ", marks), same.get(0), same.get(1), same.get(2))));
    page.heading(SAYINGS.say("lifts.heading")).add(new Block.Grid(rows));
  }

  private static String lead(WorkOrder.Step step) {
    return step.part().equals("step")
        ? Integer.toString(step.number())
        : SAYINGS.say("lead." + step.part());
  }
}
