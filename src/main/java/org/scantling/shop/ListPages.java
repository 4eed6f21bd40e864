package org.scantling.shop;

import org.scantling.print.Page;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;

/** The lists as pages, and as parts of a sheet. */
public final class ListPages {
  private static final Sayings SAYINGS = Sayings.of("lists");

  private ListPages() {}

  /** One list. */
  public static Page of(Lists lists, ListKind kind, UnitSystem units) {
    Page page =
        new Page().title(SAYINGS.say("title", "list", heading(kind), "title", lists.title()));
    write(lists, kind, new Said(units), page);
    return page.paragraph(SAYINGS.say("incomplete"));
  }

  /** What one list holds, without its heading, as a part of a sheet. */
  public static Page body(Lists lists, ListKind kind, UnitSystem units) {
    Page page = new Page();
    write(lists, kind, new Said(units), page);
    return page;
  }

  /** What a list is called. */
  public static String heading(ListKind kind) {
    return SAYINGS.say("heading." + kind.word());
  }

  private static void write(Lists lists, ListKind kind, Said said, Page page) {
    if (said.units() == UnitSystem.METRIC) {
      lists.rounding(kind).ifPresent(page::paragraph);
    }
    switch (kind) {
      case CUT_LIST -> CutListPage.write(lists, said, page);
      case BUYING -> BuyingPage.write(lists.buying(), lists.priced(), said, page);
      case SET_OUT -> SetOutPage.write(lists.setOut(), said, page);
      case ORDER -> OrderPage.write(lists.order(said.units()), said, page);
      case CLIMBERS -> ClimbersPage.write(lists.climbers(), said, page);
      case UPKEEP -> UpkeepPage.write(lists.upkeep(said.units()), page);
    }
  }
}
