package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.scantling.design.Site;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/**
 * One site with its base and the tables: everything that does not change while the engine works.
 */
final class Job {
  /** The preference that tries no alternatives: the proven rhythm decides. */
  static final String KEEP_LOOK = "look";

  private final Site site;
  private final Tables tables;
  private final String market;
  private final Stock stock;
  private final BaseRecord base;
  private final Offer offer;
  private final Ledger ledger;
  private final List<Fact> facts = new ArrayList<>();
  private final List<Integer> bayCounts;

  /**
   * @param ledger what was worked out before, with the same tables
   */
  Job(Site site, Tables tables, Ledger ledger) {
    this(site, tables, ledger, possibleBays(site, tables), List.of());
  }

  private Job(
      Site site, Tables tables, Ledger ledger, List<Integer> bayCounts, List<BayTrial> trials) {
    this.bayCounts = bayCounts;
    this.ledger = ledger;
    this.site = site;
    this.tables = tables;
    this.market = site.materials().market().orElse(tables.defaults().row("market").word());
    this.stock = new Stock(tables, market);
    this.base = new BaseRecord(site.base(), stock, tables.thumb("crossbeam.end-margin").amount());
    this.offer = new Offer(stock, base.facts());
    facts.addAll(SiteFacts.of(site, tables));
    facts.addAll(base.facts());
    facts.addAll(offer.matches());
    facts.addAll(trials);
  }

  /** The same job with what came of trying every number of bays. */
  Job withTrials(List<BayTrial> trials) {
    return trials.isEmpty() ? this : new Job(site, tables, ledger, bayCounts, trials);
  }

  /** The same job with that number of bays and no other. */
  Job withBays(int bays) {
    return new Job(site, tables, ledger, List.of(bays), List.of());
  }

  /** Every number of equal bays that could divide the walk. */
  List<Integer> bayCounts() {
    return bayCounts;
  }

  private static List<Integer> possibleBays(Site site, Tables tables) {
    double leastIn = tables.thumb("bay.least").amount();
    int most = Math.max(1, (int) Math.ceil(site.walkway().lengthIn() / leastIn));
    return IntStream.rangeClosed(1, most).boxed().toList();
  }

  Site site() {
    return site;
  }

  Tables tables() {
    return tables;
  }

  Stock stock() {
    return stock;
  }

  Offer offer() {
    return offer;
  }

  BaseRecord base() {
    return base;
  }

  Ledger ledger() {
    return ledger;
  }

  /** The bench on which checks are worked, with the answers so far. */
  Bench bench(Answers answers) {
    return new Bench(tables, stock, ledger, answers);
  }

  /** The site's demands and the base's answers. */
  List<Fact> facts() {
    return facts;
  }

  /** True where the yard sells metric sizes. */
  boolean metric() {
    return market.equals("metric");
  }

  boolean railed() {
    return site.base().sidePanels().isPresent();
  }

  /** The words that answer a question, least demanding first. */
  List<String> words(Question question) {
    return switch (question) {
      case EXPOSURE -> tables.exposures().rows().stream().map(row -> row.id()).toList();
      case SOIL -> tables.soils().rows().stream().map(row -> row.id()).toList();
      case VINE -> vines();
      case SPECIES ->
          tables.designValues().rows().stream().map(row -> row.species()).distinct().toList();
      case GRADE ->
          tables.designValues().rows().stream().map(row -> row.grade()).distinct().toList();
      case HEADER_STYLE -> List.of("on-top", "paired");
      case TOP_LINE -> List.of("level", "follows-ground", "stepped");
      case FOOTING_KIND -> List.of("embedded", "bracket");
      case FOOTING_BACKFILL -> List.of("tamped-soil", "gravel", "concrete");
      case BRACING -> List.of("none", "knee");
      default -> throw new IllegalArgumentException(question.id() + " is not answered by a word");
    };
  }

  private List<String> vines() {
    return tables.vines().rows().stream()
        .sorted(
            Comparator.comparingDouble(VineRow::wetDesignPsf)
                .thenComparingDouble(VineRow::sideFillLeafRatio)
                .thenComparing(VineRow::id))
        .map(VineRow::id)
        .toList();
  }
}
