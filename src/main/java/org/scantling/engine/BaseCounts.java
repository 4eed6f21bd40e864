package org.scantling.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.BaseCount;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Question;
import org.scantling.tables.BaseChangeRow;

/** How much of a base would change on a site, row by row of base-changes.csv. */
final class BaseCounts {
  private static final double LAST_BITS = 1e-9;

  private final Proposal proposal;
  private final boolean unproven;
  private final int place;
  private final List<BaseCount> counts = new ArrayList<>();
  private final List<Question> changed = new ArrayList<>();

  /**
   * @param proposal what is answered over the base
   * @param unproven true of a base without a record
   * @param place its place in the site file, from 0
   */
  BaseCounts(Proposal proposal, boolean unproven, int place, List<BaseChangeRow> rows) {
    this.proposal = proposal;
    this.unproven = unproven;
    this.place = place;
    for (BaseChangeRow row : rows) {
      count(row).ifPresent(measure -> counts.add(new BaseCount(row.id(), measure)));
    }
  }

  /** In the order in which they weigh; of a refusal only what can be told of it. */
  List<BaseCount> list() {
    return counts;
  }

  /** The questions whose answers were counted as changed or stronger. */
  List<Question> changed() {
    return changed;
  }

  private Optional<Measure> count(BaseChangeRow row) {
    return switch (row.counts()) {
      case REFUSED -> Optional.of(Measure.count(proposal.proposed() ? 0 : 1));
      case NAMED -> Optional.of(Measure.count(place));
      case OVER ->
          proposal.result() instanceof NeedsEngineer broken
              ? Optional.of(Measure.ratio(overRatio(broken)))
              : Optional.empty();
      default -> proposal.proposed() ? Optional.of(ofStructure(row)) : Optional.empty();
    };
  }

  private Measure ofStructure(BaseChangeRow row) {
    return switch (row.counts()) {
      case UNPROVEN -> Measure.count(unproven ? 1 : 0);
      case CHANGED -> Measure.count(noted(row, Decision::changed));
      case STRONGER -> Measure.count(noted(row, BaseCounts::stronger));
      case HARSHER ->
          Measure.count(decisions(row).stream().filter(BaseCounts::harsher).toList().size());
      case APART -> apart(row);
      default -> throw new IllegalStateException("not counted in a structure: " + row.id());
    };
  }

  private int noted(BaseChangeRow row, java.util.function.Predicate<Decision> counted) {
    List<Question> here = decisions(row).stream().filter(counted).map(Decision::question).toList();
    changed.addAll(here);
    return here.size();
  }

  private List<Decision> decisions(BaseChangeRow row) {
    return row.questions().stream().flatMap(each -> proposal.decision(each).stream()).toList();
  }

  /** A check drove it past the usual, and the base does not tell how it has it. */
  private static boolean stronger(Decision decision) {
    return decision.base().isEmpty() && decision.governing().finding() instanceof Finding.Reject;
  }

  private static boolean harsher(Decision decision) {
    return decision
        .base()
        .map(base -> decision.changed() && amount(decision.proposed()) > amount(base))
        .orElse(true);
  }

  private Measure apart(BaseChangeRow row) {
    double all = 0;
    for (Decision decision : decisions(row)) {
      double apart =
          decision
              .base()
              .map(base -> Math.abs(amount(decision.proposed()) - amount(base)))
              .orElse(0.0);
      all += row.stepIn().isPresent() ? wholeSteps(apart, row.stepIn().getAsDouble()) : apart;
    }
    return new Measure(all, row.stepIn().isPresent() ? Unit.INCH : Unit.COUNT);
  }

  private static double wholeSteps(double apartIn, double stepIn) {
    return Math.floor(apartIn / stepIn + LAST_BITS) * stepIn;
  }

  private static double amount(Outcome outcome) {
    return ((Outcome.Amount) outcome).measure().amount();
  }

  /** What is asked over what is allowed, of the option or the value that came closest. */
  private static double overRatio(NeedsEngineer broken) {
    Finding finding = broken.reason().finding();
    if (finding instanceof Finding.Reject reject) {
      return reject.ratio();
    }
    if (finding instanceof Finding.Refuse refuse) {
      return refuse.ratio();
    }
    return broken
        .against()
        .map(limit -> number(finding) / number(limit.finding()))
        .orElseThrow(() -> new IllegalStateException("no limit is told for " + finding));
  }

  private static double number(Finding finding) {
    return finding instanceof Finding.AtLeast least
        ? least.number()
        : ((Finding.AtMost) Objects.requireNonNull(finding)).number();
  }
}
