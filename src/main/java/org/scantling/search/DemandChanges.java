package org.scantling.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.design.Site;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.tables.DemandRow;
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
