package org.scantling.shop;

import java.util.List;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;
import org.scantling.tables.StepRow;

/** What keeps the structure standing, as a page for whoever looks after it. */
final class UpkeepPage {
  private static final Sayings SAYINGS = Sayings.of("upkeep");

  private UpkeepPage() {}

  static void write(Upkeep upkeep, Page page) {
    page.paragraph(SAYINGS.say("opening"));
    for (String season : StepRow.UPKEEP) {
      List<String> texts =
          upkeep.care().stream()
              .filter(each -> each.season().equals(season))
              .map(Upkeep.Care::text)
              .toList();
      if (!texts.isEmpty()) {
        page.heading(SAYINGS.say("season." + season)).add(Block.Items.of(texts));
      }
    }
  }
}
