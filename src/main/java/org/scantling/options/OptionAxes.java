package org.scantling.options;

import java.util.ArrayList;
import java.util.List;
import org.scantling.intake.Intake;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Proposal;
import org.scantling.search.DemandChanges;
import org.scantling.tables.OptionAxisRow;
import org.scantling.tables.OptionAxisRow.Toward;
import org.scantling.tables.Tables;

/** What is set otherwise in each structure that is tried, by the rows of option-axes.csv. */
final class OptionAxes {
  private final List<OptionAxisRow> rows;
  private final Intake intake;
  private final DemandChanges changes;

  OptionAxes(Tables tables, Intake intake, Proposal today) {
    this.rows = List.copyOf(tables.optionAxes().rows());
    this.intake = intake;
    this.changes = new DemandChanges(tables, intake.site(), today);
  }

  /** The crossed ones in all their combinations, then each of the others alone; never nothing. */
  List<Attempt> attempts() {
    List<Attempt> crossed = new ArrayList<>(List.of(Attempt.NOTHING));
    List<Attempt> alone = new ArrayList<>();
    for (OptionAxisRow row : rows) {
      List<Attempt> before = List.copyOf(crossed);
      for (Attempt value : values(row)) {
        if (value.crosses(row)) {
          before.forEach(each -> crossed.add(each.with(value)));
        } else {
          alone.add(value);
        }
      }
    }
    crossed.remove(Attempt.NOTHING);
    crossed.addAll(alone);
    return crossed.stream().map(each -> each.overBaseOf(intake)).toList();
  }

  private List<Attempt> values(OptionAxisRow row) {
    if (row.toward() == Toward.EACH) {
      return bases();
    }
    Demand demand = Demand.of(row.id());
    if ((changes.stated(demand) && !row.overStated()) || told(demand)) {
      return List.of();
    }
    List<Change> tried =
        switch (row.toward()) {
          case WORDS -> changes.words(demand);
          case SMALLER -> changes.smaller(demand, row.most().orElseThrow());
          default -> changes.numbers(demand, row.toward() == Toward.BOTH, row.most().orElseThrow());
        };
    boolean conceded = row.toward() == Toward.LESS;
    return tried.stream().map(each -> Attempt.of(each, conceded)).toList();
  }

  /** Bays that a site tells one by one are no habit. */
  private boolean told(Demand demand) {
    return demand == Demand.BAYS && intake.site().walkway().divided().isPresent();
  }

  private List<Attempt> bases() {
    return intake.choice().stream()
        .flatMap(choice -> choice.tried().stream())
        .filter(each -> !each.file().equals(intake.baseFile()))
        .map(each -> Attempt.NOTHING.from(each.file()))
        .toList();
  }
}
