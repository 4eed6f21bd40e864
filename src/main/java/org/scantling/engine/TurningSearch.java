package org.scantling.engine;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.design.Site;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.TurningPoints;
import org.scantling.tables.DemandRow;
import org.scantling.tables.Tables;

/**
 * How far does each choice of a proposal hold, along every demand of demands.csv? The whole engine
 * is asked at every value that is tried, so that nothing is left out that moves a choice.
 */
public final class TurningSearch {
  private final Engine engine;
  private final Tables tables;

  /**
   * @param tables those of the engine
   */
  public TurningSearch(Engine engine, Tables tables) {
    this.engine = engine;
    this.tables = tables;
  }

  /**
   * The turning points of a site.
   *
   * @param assumptions paths of the site file that were left out
   * @param questions what is asked about, not empty
   */
  public TurningPoints of(Site site, List<String> assumptions, Set<Question> questions) {
    Proposal today = engine.propose(site, assumptions);
    Set<Question> asked = Collections.unmodifiableSet(EnumSet.copyOf(questions));
    // Demands have nothing to do with each other, so each core may take one; the order stays.
    List<Reach> reaches =
        tables.demands().rows().parallelStream()
            .flatMap(row -> reach(row, today, site, assumptions, asked).stream())
            .toList();
    return new TurningPoints(today, asked, reaches);
  }

  private Optional<Reach> reach(
      DemandRow row, Proposal today, Site site, List<String> assumptions, Set<Question> asked) {
    Demand demand = Demand.of(row.id());
    Ledger ledger = new Ledger(Ledger.Keeps.MANY_RUNS);
    SiteDemand at = new SiteDemand(demand);
    return scale(row, demand, site, today)
        .map(
            scale ->
                new DemandSweep(
                    demand,
                    scale,
                    place ->
                        engine.propose(at.with(site, scale.value(place)), assumptions, ledger)))
        .map(sweep -> sweep.search(asked));
  }

  /** Empty where nobody knows today's value: a site that was refused before it was decided. */
  private Optional<DemandScale> scale(DemandRow row, Demand demand, Site site, Proposal today) {
    Optional<Outcome> now = new SiteDemand(demand).stated(site).or(() -> decided(demand, today));
    return now.map(
        value ->
            value instanceof Outcome.Amount amount
                ? new DemandScale.Numbers(amount.measure(), row.scale().orElseThrow())
                : words(demand, ((Outcome.Word) value).text(), site));
  }

  private DemandScale words(Demand demand, String now, Site site) {
    Job job = new Job(site, tables, new Ledger(Ledger.Keeps.NOTHING));
    List<String> words = job.words(question(demand).orElseThrow());
    return new DemandScale.Words(words, words.indexOf(now));
  }

  private static Optional<Outcome> decided(Demand demand, Proposal today) {
    return question(demand).flatMap(today::decision).map(decision -> decision.proposed());
  }

  /** The question by which a demand is decided where the file does not state it. */
  private static Optional<Question> question(Demand demand) {
    return switch (demand) {
      case CLEAR_WIDTH -> Optional.of(Question.CLEAR_WIDTH);
      case HEADROOM -> Optional.of(Question.HEADROOM);
      case FROST_DEPTH -> Optional.of(Question.FROST_DEPTH);
      case GROUND_SNOW -> Optional.of(Question.GROUND_SNOW);
      case WIND_SPEED -> Optional.of(Question.WIND_SPEED);
      case EXPOSURE -> Optional.of(Question.EXPOSURE);
      case SOIL -> Optional.of(Question.SOIL);
      case VINE -> Optional.of(Question.VINE);
      case SPECIES -> Optional.of(Question.SPECIES);
      case GRADE -> Optional.of(Question.GRADE);
      default -> Optional.empty();
    };
  }
}
