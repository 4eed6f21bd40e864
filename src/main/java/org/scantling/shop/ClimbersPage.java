package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** Plants and wires as a page. */
final class ClimbersPage {
  private ClimbersPage() {}

  static void write(Climbers climbers, Said said, Page page) {
    if (climbers.plants().isEmpty()) {
      page.paragraph("Nothing climbs here, so nothing is planted or wired.");
      return;
    }
    plants(climbers, said, page);
    if (climbers.runs().isEmpty()) {
      page.paragraph("No wires are needed.");
    } else {
      wires(climbers, said, page);
    }
    page.heading("How they climb").add(Block.Items.of(climbers.words()));
  }

  private static void plants(Climbers climbers, Said said, Page page) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("post", "climber", "off the post, outside"));
    for (Climbers.Plant plant : climbers.plants()) {
      rows.add(List.of(plant.post(), plant.vine(), said.length(plant.offIn())));
    }
    page.heading("Plants").add(new Block.Grid(rows));
  }

  private static void wires(Climbers climbers, Said said, Page page) {
    List<Block.Item> items = new ArrayList<>();
    for (Climbers.WireRun run : climbers.runs()) {
      boolean upright = run.way().equals("upright");
      items.add(
          new Block.Item(
              Said.capital(run.where()),
              Said.counted(run.times(), "run", "runs")
                  + " of "
                  + said.length(run.lengthIn())
                  + ", "
                  + (upright
                      ? run.wires() + " upright wires each, from the first post of the bay at "
                      : "level, over the ground at ")
                  + said.lengths(run.heightsIn())
                  + "; "
                  + run.eyes()
                  + " eyes and "
                  + (run.holes() == 0 ? "no holes" : run.holes() + " holes")
                  + " to a run"));
    }
    page.heading("Wires").items(items);
    page.paragraph(
        "In all "
            + said.length(climbers.wireIn())
            + " of wire, "
            + climbers.eyes()
            + " eyes, "
            + climbers.holes()
            + " holes through "
            + (climbers.runs().get(0).way().equals("upright") ? "rails." : "pickets."));
  }
}
