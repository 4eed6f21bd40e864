package org.scantling.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.scantling.concurrent.Lazy;
import org.scantling.intake.Intake;
import org.scantling.print.ComparedSite;
import org.scantling.print.NearMissJson;
import org.scantling.print.NearMissPage;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.SmallChange;
import org.scantling.shop.CostBlock;
import org.scantling.shop.Estimate;
import org.scantling.shop.EstimateJson;
import org.scantling.shop.Lists;
import org.scantling.words.Words;
import tools.jackson.databind.node.ObjectNode;

/**
 * What one proposal comes to in money and time, and the small changes that would spare something;
 * its lists and those changes are worked out once for all who ask, when somebody does.
 */
final class CostedProposal {
  private final Costs costs;
  private final Proposal proposal;
  private final Intake intake;
  private final Lazy<Lists> lists;
  private final Lazy<List<SmallChange>> near;

  CostedProposal(Costs costs, Proposal proposal, Intake intake) {
    this(costs, proposal, intake, new Lazy<>(List::of));
  }

  private CostedProposal(
      Costs costs, Proposal proposal, Intake intake, Lazy<List<SmallChange>> near) {
    this.costs = costs;
    this.near = near;
    this.proposal = proposal;
    this.intake = intake;
    this.lists =
        new Lazy<>(
            () ->
                Lists.of(proposal, intake.site(), costs.tables(), costs.yard())
                    .priced(costs.prices()));
  }

  /** The same with what somebody would mention beside it. */
  CostedProposal beside(Supplier<List<SmallChange>> near) {
    return new CostedProposal(costs, proposal, intake, new Lazy<>(near));
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

  /** Where there are prices to go by. */
  Optional<Estimate> estimate() {
    return costs.prices().isPresent() && proposal.proposed()
        ? Optional.of(lists().estimate())
        : Optional.empty();
  }

  /** Small changes that would spare something. */
  List<SmallChange> near() {
    return near.get();
  }

  /** What stands before the cautions: the small changes, and the cost where there are prices. */
  Page more(Words words, PrintOptions how) {
    Page more = NearMissPage.of(near.get(), proposal, words, how.units());
    estimate().ifPresent(each -> new CostBlock(each).page().blocks().forEach(more::add));
    return more;
  }

  /** The same for programs, and the hours. */
  Consumer<ObjectNode> json(Words words) {
    if (!proposal.proposed()) {
      return node -> {};
    }
    return node -> {
      NearMissJson.write(near.get(), proposal, words, node);
      estimate()
          .ifPresentOrElse(
              each -> EstimateJson.write(each, node),
              () -> EstimateJson.write(lists().work(), node));
    };
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
