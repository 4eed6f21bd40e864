package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.scantling.design.Site;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/**
 * One site with its base and the tables: everything that does not change while the engine works.
 */
final class Job {
  private final Site site;
  private final Tables tables;
  private final Stock stock;
  private final BaseRecord base;
  private final List<Fact> facts = new ArrayList<>();

  Job(Site site, Tables tables) {
    this.site = site;
    this.tables = tables;
    this.stock = new Stock(tables, tables.defaults().row("market").word());
    this.base = new BaseRecord(site.base(), stock, tables.thumb("crossbeam.end-margin").amount());
    facts.addAll(SiteFacts.of(site, tables));
    facts.addAll(base.facts());
    facts.addAll(tables.defaults().rows());
    facts.addAll(tables.thumbs().rows());
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

  BaseRecord base() {
    return base;
  }

  /** The site's demands, the base's answers and the rows that any rule may read. */
  List<Fact> facts() {
    return facts;
  }

  /** True where the yard sells metric sizes. */
  boolean metric() {
    return tables.defaults().row("market").word().equals("metric");
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
