package org.scantling.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal;
import org.scantling.tables.DemandRow;

/**
 * One demand of a site, its values as places on a line, and what the engine proposes at them. Not
 * safe to share between threads, but for what only asks for values.
 */
final class DemandLine {
  private final DemandRow row;
  private final DemandScale scale;
  private final Site site;
  private final Engine engine;
  private final List<String> assumptions;
  private final SiteDemand demand;
  private final Supplier<ResultCache> cache;
  private final Map<Integer, Proposal> tried = new HashMap<>();

  /**
   * @param assumptions paths of the site file that were left out
   * @param cache of whoever works at the time: what one demand has worked out, the next finds
   */
  DemandLine(
      DemandRow row,
      DemandScale scale,
      Site site,
      Engine engine,
      List<String> assumptions,
      Supplier<ResultCache> cache) {
    this.row = row;
    this.scale = scale;
    this.site = site;
    this.engine = engine;
    this.assumptions = assumptions;
    this.cache = cache;
    this.demand = new SiteDemand(Demand.of(row.id()));
  }

  DemandScale scale() {
    return scale;
  }

  boolean choice() {
    return row.choice();
  }

  boolean words() {
    return scale.words();
  }

  /** True where less of the demand lies one way, and more the other. */
  boolean ordered() {
    return row.ordered();
  }

  /** What is proposed with that value and all else as it is. */
  Proposal at(int place) {
    return tried.computeIfAbsent(
        place, each -> engine.answer(with(site, each), assumptions, cache.get()));
  }

  /** What is proposed with that value and another demand's at another. */
  Proposal at(int place, DemandLine other, int otherPlace) {
    return engine.answer(other.with(with(site, place), otherPlace), assumptions, cache.get());
  }

  private Site with(Site from, int place) {
    return demand.with(from, scale.value(place));
  }

  Change change(int place) {
    return new Change(
        Demand.of(row.id()),
        demand.setting(site),
        scale.value(scale.today()),
        scale.value(place),
        shareRatio(place),
        row.choice());
  }

  /**
   * The share of its range that a value gives up, by the weight of the demand. Words that stand in
   * no order are as far apart as the whole range.
   */
  double shareRatio(int place) {
    int away = Math.abs(place - scale.today());
    double share = row.ordered() ? scale.shareRatio(away) : 1;
    return share * row.weightRatio().orElseThrow();
  }

  LeastChange.Searched searched() {
    return new LeastChange.Searched(
        Demand.of(row.id()), scale.value(scale.least()), scale.value(scale.most()));
  }
}
