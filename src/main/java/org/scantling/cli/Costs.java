package org.scantling.cli;

import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.intake.Intake;
import org.scantling.print.ComparedSite;
import org.scantling.print.Page;
import org.scantling.reasons.Proposal;
import org.scantling.shop.CostBlock;
import org.scantling.shop.Estimate;
import org.scantling.shop.EstimateJson;
import org.scantling.shop.Lists;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;
import tools.jackson.databind.node.ObjectNode;

/**
 * What proposals come to in money and time.
 *
 * @param prices what things cost, where somebody says it
 */
record Costs(Tables tables, Optional<Yard> yard, Optional<PriceList> prices) {
  Lists lists(Proposal proposal, Intake intake) {
    return Lists.of(proposal, intake.site(), tables, yard).priced(prices);
  }

  private Optional<Estimate> estimate(Proposal proposal, Intake intake) {
    return prices.isPresent() && proposal.proposed()
        ? Optional.of(lists(proposal, intake).estimate())
        : Optional.empty();
  }

  /** A few lines of a proposal; nothing where there are no prices. */
  Page block(Proposal proposal, Intake intake) {
    return estimate(proposal, intake).map(each -> new CostBlock(each).page()).orElseGet(Page::new);
  }

  /** The hours for programs, and the cost where there are prices. */
  Consumer<ObjectNode> json(Proposal proposal, Intake intake) {
    if (!proposal.proposed()) {
      return node -> {};
    }
    return estimate(proposal, intake)
        .<Consumer<ObjectNode>>map(each -> node -> EstimateJson.write(each, node))
        .orElseGet(() -> node -> EstimateJson.write(lists(proposal, intake).work(), node));
  }

  /** A column of a comparison; nothing where there are no prices. */
  Optional<ComparedSite.Figures> figures(Proposal proposal, Intake intake) {
    return estimate(proposal, intake)
        .map(
            each -> {
              CostBlock told = new CostBlock(each);
              return new ComparedSite.Figures(
                  told.cell(),
                  told.leftOut(),
                  told.hours(),
                  node -> EstimateJson.write(each, node));
            });
  }
}
