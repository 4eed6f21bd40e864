package org.scantling.cli;

import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.concurrent.Lazy;
import org.scantling.intake.Intake;
import org.scantling.print.ComparedSite;
import org.scantling.print.Page;
import org.scantling.reasons.Proposal;
import org.scantling.shop.CostBlock;
import org.scantling.shop.Estimate;
import org.scantling.shop.EstimateJson;
import org.scantling.shop.Lists;
import tools.jackson.databind.node.ObjectNode;

/** What one proposal comes to in money and time; its lists are worked out once for all who ask. */
final class CostedProposal {
  private final Costs costs;
  private final Proposal proposal;
  private final Intake intake;
  private final Lazy<Lists> lists;

  CostedProposal(Costs costs, Proposal proposal, Intake intake) {
    this.costs = costs;
    this.proposal = proposal;
    this.intake = intake;
    this.lists =
        new Lazy<>(
            () ->
                Lists.of(proposal, intake.site(), costs.tables(), costs.yard())
                    .priced(costs.prices()));
  }

  Costs by() {
    return costs;
  }

  Proposal proposal() {
    return proposal;
  }

  Intake intake() {
    return intake;
  }

  /** Of a structure that is proposed. */
  Lists lists() {
    return lists.get();
  }

  private Optional<Estimate> estimate() {
    return costs.prices().isPresent() && proposal.proposed()
        ? Optional.of(lists().estimate())
        : Optional.empty();
  }

  /** A few lines of a proposal; nothing where there are no prices. */
  Page block() {
    return estimate().map(each -> new CostBlock(each).page()).orElseGet(Page::new);
  }

  /** The hours for programs, and the cost where there are prices. */
  Consumer<ObjectNode> json() {
    if (!proposal.proposed()) {
      return node -> {};
    }
    return estimate()
        .<Consumer<ObjectNode>>map(each -> node -> EstimateJson.write(each, node))
        .orElseGet(() -> node -> EstimateJson.write(lists().work(), node));
  }

  /** A column of a comparison; nothing where there are no prices. */
  Optional<ComparedSite.Figures> figures() {
    return estimate()
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
