package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Stock;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.ServiceRecord;
import org.scantling.tables.Tables;

/** One site with its base and the tables, and the facts that follow from them alone. */
final class SiteBasis {
  private final Site site;
  private final Tables tables;
  private final String market;
  private final Stock stock;
  private final BaseRecord base;
  private final Offer offer;
  private final List<Fact> facts;

  SiteBasis(Site site, Tables tables) {
    this.site = site;
    this.tables = tables;
    this.market = tables.market(site.materials().market());
    this.stock = new Stock(tables, market);
    this.base = record(site.base());
    this.offer = new Offer(stock, madeOf(base.facts(), tables));
    this.facts = List.copyOf(asked());
  }

  /** What the site asks and the base has, whatever else is laid down. */
  private List<Fact> asked() {
    List<Fact> all = new ArrayList<>(SiteFacts.of(site, tables));
    all.addAll(base.facts());
    site.base()
        .proven()
        .map(stood -> new ServiceRecord(stood.builtYear(), stood.slopePercent()))
        .ifPresent(all::add);
    all.addAll(offer.matches());
    all.addAll(RoleTimbers.of(site));
    return all;
  }

  /** What the base is made of, with the usual brace where it has none. */
  private static List<Proven> madeOf(List<Proven> base, Tables tables) {
    if (base.stream().anyMatch(each -> each.question() == Question.BRACE_SIZE)) {
      return base;
    }
    List<Proven> all = new ArrayList<>(base);
    all.add(Proven.option(Question.BRACE_SIZE, tables.defaults().row("brace").word()));
    return all;
  }

  BaseRecord record(BaseDesign design) {
    return new BaseRecord(design, stock, tables.thumb("crossbeam.end-margin").amount());
  }

  Site site() {
    return site;
  }

  Tables tables() {
    return tables;
  }

  /** Where the timber is bought. */
  String market() {
    return market;
  }

  Stock stock() {
    return stock;
  }

  BaseRecord base() {
    return base;
  }

  Offer offer() {
    return offer;
  }

  /** What the site asks and the base has. */
  List<Fact> facts() {
    return facts;
  }
}
