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
              Said.capital(run.where()) + ", for the " + run.vine(),
              (upright ? upright(run, said) : level(run, said))
                  + "; "
                  + Said.counted(run.times(), "such run", "such runs")
                  + " in all, of "
                  + run.parts().wire()
                  + ", each eye a "
                  + run.parts().eye()));
    }
    page.heading("Wires").items(items);
    page.paragraph(
        "In all "
            + said.run(climbers.wireIn())
            + " of wire, "
            + climbers.eyes()
            + " eyes, "
            + (climbers.holes() > 0 ? climbers.holes() + " holes through rails." : "no holes."));
  }

  private static String upright(Climbers.WireRun run, Said said) {
    String holes =
        run.holes() > 0
            ? "up through a hole in the rail, over an eye under the header and down again: "
            : "up from an eye on a peg in the ground, over an eye under the header and down again: ";
    return "one run of "
        + said.length(run.lengthIn())
        + ", "
        + holes
        + Said.counted(run.wires(), "upright wire", "upright wires")
        + " at "
        + said.lengths(run.heightsIn())
        + " from the center of the bay's first post; "
        + counts(run);
  }

  private static String level(Climbers.WireRun run, Said said) {
    return Said.counted(run.heightsIn().size(), "run", "runs")
        + " of "
        + said.length(run.lengthIn())
        + ", through eyes in the outer faces of the posts, above the ground at "
        + said.lengths(run.heightsIn())
        + "; "
        + counts(run);
  }

  private static String counts(Climbers.WireRun run) {
    String eyes = Said.counted(run.eyes(), "eye", "eyes");
    return run.holes() > 0
        ? eyes + " and " + Said.counted(run.holes(), "hole", "holes") + " to a run"
        : eyes + " to a run";
  }
}
