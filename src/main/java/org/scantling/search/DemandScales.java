package org.scantling.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.DemandRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** The values of each demand that can be tried on a site, counted from today's. */
final class DemandScales {
  private final Tables tables;

  DemandScales(Tables tables) {
    this.tables = tables;
  }

  /**
   * Empty where nobody knows today's value: the site has no such thing, or was refused before it
   * was decided. So for the length of a bay where posts keep stretches free: bays that go around
   * what stays where it is do not grow with the walk.
   */
  Optional<DemandScale> of(DemandRow row, Site site, Proposal today) {
    Demand demand = Demand.of(row.id());
    if (demand == Demand.BAY && !site.walkway().free().isEmpty()) {
      return Optional.empty();
    }
    Optional<Outcome> now = new SiteDemand(demand).stated(site).or(() -> decided(demand, today));
    return now.map(
        value ->
            value instanceof Outcome.Amount amount
                ? new DemandScale.Numbers(amount.measure(), row.scale().orElseThrow())
                : words(demand, ((Outcome.Word) value).text(), site));
  }

  private DemandScale words(Demand demand, String now, Site site) {
    List<String> words =
        switch (demand) {
          case FOOTING -> standings(now);
          case KEEP -> List.of("look", "cost", "members");
          case BASIS ->
              site.base().proven().isPresent()
                  ? List.of("published", "proven")
                  : List.of("published");
          case VINE -> climbers(now, site);
          case LARGEST_POST -> sizes("post", now);
          case LARGEST_HEADER -> sizes("header", now);
          case LARGEST_CROSSBEAM -> sizes("crossbeam", now);
          default -> problem(site).words(demand.question().orElseThrow());
        };
    return new DemandScale.Words(words, words.indexOf(now));
  }

  /** Those of the member; a header may be of boards too. */
  private List<String> sizes(String role, String now) {
    List<String> sizes = new ArrayList<>();
    for (SizeRow size : tables.sizes().rows()) {
      boolean serves = size.serves(role) || (role.equals("header") && size.serves("board"));
      if (size.id().equals(now) || (serves && size.market().equals(tables.size(now).market()))) {
        sizes.add(size.id());
      }
    }
    return sizes;
  }

  /** Loose fill is no other structure: it is among them only where the file asks for it. */
  private static List<String> standings(String now) {
    List<String> all =
        new ArrayList<>(
            List.of(
                WayOfBuilding.EMBEDDED,
                WayOfBuilding.CONCRETE,
                WayOfBuilding.BRACKET,
                WayOfBuilding.MOMENT_BASE));
    if (!all.contains(now)) {
      all.add(0, now);
    }
    return all;
  }

  /**
   * Those that winter there; where nobody named the zone, those as hardy as the one that grows
   * there.
   */
  private List<String> climbers(String now, Site site) {
    double coldest = tables.vine(now).coldestZone();
    double zone = site.climate().hardinessZone().orElse(coldest);
    return problem(site).words(Question.VINE).stream()
        .filter(each -> each.equals(now) || tables.vine(each).winters(zone))
        .toList();
  }

  private DesignProblem problem(Site site) {
    return new DesignProblem(site, tables, new ResultCache(ResultCache.Retention.NOTHING));
  }

  /**
   * Headroom that nobody asked for is what the structure leaves: asked for less, its posts would be
   * cut to it.
   */
  private static Optional<Outcome> decided(Demand demand, Proposal today) {
    if (demand == Demand.HEADROOM && today.result() instanceof Proposal.Result.Proposed built) {
      return Optional.of(new Outcome.Amount(Measure.inches(built.structure().top().headroomIn())));
    }
    return demand.question().flatMap(today::decision).map(decision -> decision.proposed());
  }
}
