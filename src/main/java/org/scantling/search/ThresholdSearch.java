package org.scantling.search;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.answers.ResultCache;
import org.scantling.concurrent.Cores;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Thresholds;
import org.scantling.tables.DemandRow;
import org.scantling.tables.Tables;

/**
 * How far does each choice of a proposal hold, along every such demand of demands.csv? The whole
 * engine is asked at every value that is tried, so that nothing is left out that moves a choice.
 */
public final class ThresholdSearch {
  private final Engine engine;
  private final Tables tables;

  /**
   * @param tables those of the engine
   */
  public ThresholdSearch(Engine engine, Tables tables) {
    this.engine = engine;
    this.tables = tables;
  }

  /**
   * The thresholds of a site.
   *
   * @param assumptions paths of the site file that were left out
   * @param questions what is asked about, not empty
   */
  public Thresholds of(Site site, List<String> assumptions, Set<Question> questions) {
    Proposal today = engine.propose(site, assumptions);
    Set<Question> asked = Collections.unmodifiableSet(EnumSet.copyOf(questions));
    List<DemandRow> rows = tables.demands().rows().stream().filter(DemandRow::limits).toList();
    // Demands have nothing to do with each other, so each core may take one; the order stays.
    // What one core has worked out for a demand, it finds again for the next.
    ThreadLocal<ResultCache> own =
        ThreadLocal.withInitial(() -> new ResultCache(ResultCache.Retention.MANY_RUNS));
    List<Reach> reaches =
        Cores.map(rows, row -> reach(row, today, site, assumptions, asked, own.get())).stream()
            .flatMap(Optional::stream)
            .toList();
    return new Thresholds(today, asked, reaches);
  }

  private Optional<Reach> reach(
      DemandRow row,
      Proposal today,
      Site site,
      List<String> assumptions,
      Set<Question> asked,
      ResultCache cache) {
    Demand demand = Demand.of(row.id());
    SiteDemand at = new SiteDemand(demand);
    Site from = demand == Demand.BAY ? inItsBays(site, today) : site;
    return new DemandScales(tables)
        .of(row, site, today)
        .map(
            scale ->
                new DemandSweep(
                    demand,
                    scale,
                    place -> engine.answer(at.with(from, scale.value(place)), assumptions, cache)))
        .map(sweep -> sweep.search(others(asked, demand)));
  }

  /** How a number of bays follows the number that is asked for need not be told. */
  private static Set<Question> others(Set<Question> asked, Demand demand) {
    Set<Question> others = EnumSet.copyOf(asked);
    demand.question().ifPresent(others::remove);
    return others;
  }

  /** The site with its bays asked for as they were decided, so that their number stays. */
  static Site inItsBays(Site site, Proposal today) {
    if (site.walkway().divided().isPresent()) {
      return site;
    }
    return today
        .decision(Question.BAYS)
        .map(each -> ((Outcome.Amount) each.proposed()).measure().amount())
        .map(bays -> (int) Math.round(bays))
        .map(bays -> site.with(site.walkway().dividedInto(bays, site.walkway().lengthIn())))
        .orElse(site);
  }
}
