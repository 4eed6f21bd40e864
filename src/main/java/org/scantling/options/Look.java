package org.scantling.options;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.answers.Stock;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.SizeOf;
import org.scantling.tables.LookRow;
import org.scantling.tables.Tables;

/**
 * How near a structure comes to the proportions of its base: for each row of look.csv the smaller
 * of its own proportion and the base's over the larger, and of them all the mean. 1 where every
 * proportion is the base's.
 */
final class Look {
  private final List<LookRow> rows;
  private final Stock stock;

  Look(Tables tables, Optional<String> market) {
    this.rows = List.copyOf(tables.look().rows());
    this.stock = new Stock(tables, tables.market(market));
  }

  /** What the base does not tell is not counted. */
  double nearness(Proposal proposal) {
    return rows.stream().flatMapToDouble(row -> near(row, proposal).stream()).average().orElse(1);
  }

  private OptionalDouble near(LookRow row, Proposal proposal) {
    Optional<Decision> of = proposal.decision(row.of()).filter(each -> each.base().isPresent());
    if (of.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (row.dimension() == LookRow.Dimension.SAME) {
      return OptionalDouble.of(of.get().changed() ? 0 : 1);
    }
    Optional<Decision> to = row.to().flatMap(proposal::decision);
    if (to.isEmpty() || to.get().base().isEmpty()) {
      return OptionalDouble.empty();
    }
    double here = inches(row, of.get().proposed()) / amount(to.get().proposed());
    double there =
        inches(row, of.get().base().orElseThrow()) / amount(to.get().base().orElseThrow());
    return OptionalDouble.of(Math.min(here, there) / Math.max(here, there));
  }

  private double inches(LookRow row, Outcome outcome) {
    return switch (row.dimension()) {
      case BREADTH -> size(row.of(), outcome).breadthIn();
      case DEPTH -> size(row.of(), outcome).depthIn();
      default -> amount(outcome);
    };
  }

  private SizeOf size(Question question, Outcome outcome) {
    String option = ((Outcome.Word) outcome).text();
    return stock.behind(Answer.option(question, option)).orElseThrow();
  }

  private static double amount(Outcome outcome) {
    return ((Outcome.Amount) outcome).measure().amount();
  }
}
