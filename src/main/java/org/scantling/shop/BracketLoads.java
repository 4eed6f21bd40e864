package org.scantling.shop;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Proposal;
import org.scantling.sayings.Sayings;

/** What the bracket under a post must be rated for: the worst of each way by the footing checks. */
final class BracketLoads {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Proposal proposal;

  BracketLoads(Proposal proposal) {
    this.proposal = proposal;
  }

  Rating rating() {
    double sideLb = Math.max(demandLb("footing.sliding"), solvedLb("footing.length-pier"));
    return new Rating(demandLb("footing.uplift"), sideLb, solvedLb("footing.pressure-pier"));
  }

  private double demandLb(String check) {
    OptionalDouble worst =
        proposal.checks().stream()
            .filter(each -> each.id().equals(check) && each.unit() == Unit.POUND)
            .mapToDouble(each -> each.check().demand())
            .max();
    return Math.max(0, worst.orElse(0));
  }

  /** The reaction that a step of the working begins with. */
  private double solvedLb(String step) {
    return proposal.trace().stream()
        .filter(each -> each.id().equals(step))
        .flatMap(each -> each.evidence().find("solved").stream())
        .flatMap(BracketLoads::amount)
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(0);
  }

  private static Stream<Double> amount(Evidence.Seen seen) {
    return seen instanceof Evidence.Seen.Amount amount
        ? Stream.of(amount.measure().amount())
        : Stream.empty();
  }

  /** As it is asked for over the counter; whole pounds, rounded up. */
  static String told(Rating rating) {
    return SAYINGS.say(
        rating.liftLb() > 0 ? "rating" : "rating.no-lift",
        "lift",
        pounds(rating.liftLb()),
        "side",
        pounds(rating.sideLb()),
        "down",
        pounds(rating.downLb()));
  }

  private static String pounds(double lb) {
    return Long.toString((long) Math.ceil(lb - 1e-9));
  }
}
