package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** Plants and wires as a page. */
final class ClimbersPage {
  private static final Sayings SAYINGS = Sayings.of("climbers");

  private ClimbersPage() {}

  static void write(Climbers climbers, Said said, Page page) {
    if (climbers.plants().isEmpty()) {
      page.paragraph(SAYINGS.say("nothing"));
      return;
    }
    plants(climbers, said, page);
    if (climbers.runs().isEmpty()) {
      page.paragraph(SAYINGS.say("no-wires"));
    } else {
      wires(climbers, said, page);
    }
    page.heading(SAYINGS.say("how.heading")).add(Block.Items.of(climbers.words()));
  }

  private static void plants(Climbers climbers, Said said, Page page) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "post", "climber", "off-post"));
    for (Climbers.Plant plant : climbers.plants()) {
      rows.add(List.of(plant.post(), plant.vine(), said.length(plant.offIn())));
    }
    page.heading(SAYINGS.say("plants.heading")).add(new Block.Grid(rows));
  }

  private static void wires(Climbers climbers, Said said, Page page) {
    List<Block.Item> items = new ArrayList<>();
    for (Climbers.WireRun run : climbers.runs()) {
      items.add(
          new Block.Item(
              Said.capital(SAYINGS.say("run", "where", run.where(), "climber", run.vine())),
              SAYINGS.say(saying(run), blanks(run, said))));
    }
    page.heading(SAYINGS.say("wires.heading")).items(items);
    page.paragraph(
        SAYINGS.say(
            climbers.holes() > 0 ? "total.bored" : "total.plain",
            "wire",
            said.run(climbers.wireIn()),
            "eyes",
            Integer.toString(climbers.eyes()),
            "holes",
            Integer.toString(climbers.holes())));
  }

  private static String saying(Climbers.WireRun run) {
    if (!run.way().equals("upright")) {
      return "run.level";
    }
    return run.holes() > 0 ? "run.upright" : "run.pegged";
  }

  private static Map<String, String> blanks(Climbers.WireRun run, Said said) {
    boolean upright = run.way().equals("upright");
    return Map.of(
        "length", said.length(run.lengthIn()),
        "wires", Said.count(upright ? run.wires() : run.heightsIn().size()),
        "places", said.lengths(run.heightsIn()),
        "eyes", Said.count(run.eyes()),
        "holes", Said.count(run.holes()),
        "runs", Said.count(run.times()),
        "wire", run.parts().wire(),
        "eye", run.parts().eye());
  }
}
