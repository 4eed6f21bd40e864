package org.scantling.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.answers.Stock;
import org.scantling.design.Site;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.DemandRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** One demand of a site asked otherwise, as it would be set beside the site file. */
public final class DemandChanges {
  private final Tables tables;
  private final Site site;
  private final Proposal today;

  /**
   * @param today what is proposed for the site
   */
  public DemandChanges(Tables tables, Site site, Proposal today) {
    this.tables = tables;
    this.site = site;
    this.today = today;
  }

  /** True where the site file states it itself. */
  public boolean stated(Demand demand) {
    return new SiteDemand(demand).stated(site).isPresent();
  }

  /** Every other word of its list; nothing where today's is not known. */
  public List<Change> words(Demand demand) {
    DemandRow row = tables.demands().row(demand.path());
    return scale(row)
        .map(
            scale ->
                IntStream.rangeClosed(scale.least(), scale.most())
                    .filter(place -> place != scale.today())
                    .mapToObj(place -> change(row, scale, place))
                    .toList())
        .orElse(List.of());
  }

  /**
   * Less of a number, or less and more, the nearest first; nothing where today's is not known.
   *
   * @param most how many steps either way
   */
  public List<Change> numbers(Demand demand, boolean more, int most) {
    DemandRow row = tables.demands().row(demand.path());
    Optional<DemandScale> known = scale(row);
    List<Change> changes = new ArrayList<>();
    if (known.isPresent()) {
      DemandScale scale = known.get();
      IntStream.rangeClosed(Math.max(scale.least(), -most), more ? Math.min(scale.most(), most) : 0)
          .filter(place -> place != scale.today())
          .boxed()
          .sorted(Comparator.comparingInt(Math::abs))
          .forEach(place -> changes.add(change(row, scale, place)));
    }
    return changes;
  }

  /**
   * Of a largest size: every size that is smaller than what is built today, the next smaller first;
   * nothing where none is sold.
   *
   * @param most how many of them
   */
  public List<Change> smaller(Demand demand, int most) {
    Question question = member(demand);
    if (!today.proposed()) {
      return List.of();
    }
    Outcome.Word now = (Outcome.Word) today.decision(question).orElseThrow().proposed();
    int plies = Stock.plies(now.text());
    SizeRow built = tables.size(Stock.size(now.text()));
    String role = plies > 1 ? "board" : question.subject();
    List<SizeRow> sizes = new ArrayList<>(tables.sizes(role, built.market()));
    sizes.removeIf(each -> each.equals(built) || !each.fitsIn(built));
    Collections.reverse(sizes);
    return sizes.stream()
        .limit(most)
        .map(
            each ->
                new Change(
                    demand,
                    demand.setting(),
                    new Outcome.Word(built.id()),
                    new Outcome.Word(each.id()),
                    0,
                    true))
        .toList();
  }

  private static Question member(Demand largest) {
    return switch (largest) {
      case LARGEST_POST -> Question.POST_SIZE;
      case LARGEST_HEADER -> Question.HEADER_SIZE;
      case LARGEST_CROSSBEAM -> Question.CROSSBEAM_SIZE;
      default -> throw new IllegalArgumentException(largest.path() + " is no largest size");
    };
  }

  private Optional<DemandScale> scale(DemandRow row) {
    return new DemandScales(tables).of(row, site, today);
  }

  private Change change(DemandRow row, DemandScale scale, int place) {
    Demand demand = Demand.of(row.id());
    Outcome now = scale.value(scale.today());
    return new Change(
        demand, new SiteDemand(demand).setting(site), now, scale.value(place), 0, row.choice());
  }
}
