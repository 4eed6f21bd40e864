package org.scantling.shop;

import org.scantling.print.Page;
import org.scantling.quantity.UnitSystem;

/** The lists as pages, one by one or all together as the builder's sheet. */
public final class ListPages {
  private ListPages() {}

  /** One list. */
  public static Page of(Lists lists, ListKind kind, UnitSystem units) {
    Page page = new Page().title(kind.heading() + ": " + lists.title());
    write(lists, kind, new Said(units), page);
    return page.paragraph(
        "This list is not complete without the cautions and assumptions of the proposal.");
  }

  /** All lists, for the site. */
  public static Page builder(Lists lists, UnitSystem units) {
    Page page = new Page().title("Builder's sheet: " + lists.title());
    page.paragraph(
        "Read the cautions at the end of this sheet before the first hole is dug: they belong to"
            + " every page of it, and so does what was assumed.");
    for (ListKind kind : ListKind.values()) {
      page.title(kind.heading());
      write(lists, kind, new Said(units), page);
    }
    return page;
  }

  private static void write(Lists lists, ListKind kind, Said said, Page page) {
    if (said.units() == UnitSystem.METRIC) {
      lists.rounding(kind).ifPresent(page::paragraph);
    }
    switch (kind) {
      case CUT_LIST -> CutListPage.write(lists, said, page);
      case BUYING -> BuyingPage.write(lists.buying(), said, page);
      case SET_OUT -> SetOutPage.write(lists.setOut(), said, page);
      case ORDER -> OrderPage.write(lists.order(said.units()), said, page);
      case CLIMBERS -> ClimbersPage.write(lists.climbers(), said, page);
    }
  }
}
