package org.scantling.cli;

import org.scantling.print.MarkdownPage;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.shop.Estimate;
import org.scantling.shop.EstimateFor;
import org.scantling.shop.ListCsv;
import org.scantling.shop.ListJson;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;
import org.scantling.shop.Lists;

/** The lists and the estimate of one proposal, written as asked. */
final class ShownLists {
  private final Lists lists;

  ShownLists(CostedProposal costed) {
    this.lists = costed.lists();
  }

  String list(ListKind kind, ProposeCommand.Format format, PrintOptions how) {
    return switch (format) {
      case MARKDOWN -> MarkdownPage.print(ListPages.of(lists, kind, how.units()));
      case JSON -> ListJson.of(lists, kind, how.units());
      case CSV -> ListCsv.of(lists, kind, how.units());
      default -> TextPage.print(ListPages.of(lists, kind, how.units()), how);
    };
  }

  String estimate(EstimateFor whom, ProposeCommand.Format format, PrintOptions how) {
    Estimate estimate = lists.estimate();
    return switch (format) {
      case MARKDOWN -> MarkdownPage.print(whom.page(estimate, how.units()));
      case JSON -> whom.json(estimate);
      case CSV -> whom.csv(estimate);
      default -> TextPage.print(whom.page(estimate, how.units()), how);
    };
  }
}
