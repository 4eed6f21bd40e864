package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.SmallChange;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** Small changes that would spare something, with what is typed for each. */
public final class NearMissPage {
  private NearMissPage() {}

  /** With what is typed for each; nothing where there are none. */
  public static Page of(List<SmallChange> near, Proposal today, Words words, UnitSystem units) {
    Page page = new Page();
    if (!near.isEmpty()) {
      heading(page);
      NearMissWords said = new NearMissWords(today, words, words.voice(Reader.BUILDER, units));
      List<Block.Item> items = new ArrayList<>();
      List<String> typed = new ArrayList<>();
      for (SmallChange each : near) {
        String number = Integer.toString(items.size() + 1);
        items.add(new Block.Item(number, said.sentence(each)));
        typed.add(
            NearMissWords.SAYINGS.say(
                "typed",
                "number",
                number,
                "settings",
                String.join(" ", TypedSettings.of(each.settings()))));
      }
      page.items(items).paragraph(NearMissWords.SAYINGS.say("how"));
      page.add(new Block.Picture(typed));
    }
    return page;
  }

  /** The same for a sheet, which nobody types from. */
  public static Page told(
      List<SmallChange> near, Proposal today, Words words, Reader reader, UnitSystem units) {
    Page page = new Page();
    if (!near.isEmpty()) {
      heading(page);
      NearMissWords said = new NearMissWords(today, words, words.voice(reader, units));
      page.items(near.stream().map(each -> new Block.Item("", said.sentence(each))).toList());
    }
    return page;
  }

  private static void heading(Page page) {
    page.heading(NearMissWords.SAYINGS.say("heading"));
    page.paragraph(NearMissWords.SAYINGS.say("intro"));
  }
}
