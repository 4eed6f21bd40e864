package org.scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.scantling.concurrent.Lazy;
import org.scantling.depths.DepthTables;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.ValidationError;
import org.scantling.engine.Engine;
import org.scantling.engine.NamedBase;
import org.scantling.intake.DesignIntake;
import org.scantling.intake.DesignReader;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteLine;
import org.scantling.intake.SiteReader;
import org.scantling.intake.SourceText;
import org.scantling.intake.Vocabulary;
import org.scantling.options.NearMisses;
import org.scantling.options.OptionSearch;
import org.scantling.problem.Buildable;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.SmallChange;
import org.scantling.reasons.Thresholds;
import org.scantling.reasons.ThumbTrial;
import org.scantling.search.LeastChangeSearch;
import org.scantling.search.ThresholdSearch;
import org.scantling.tables.HouseTables;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/** Tables, rules and reader, put together for one run. */
final class Workplace {
  private final Tables tables;
  private final StandardInput standardInput = new StandardInput();

  /** Put together when it is first needed: a file with a slip in it is refused sooner. */
  private final Lazy<Engine> engine;

  private Workplace(Tables tables) {
    this.tables = tables;
    this.engine = new Lazy<>(() -> new Engine(CompiledRules.get(), tables));
  }

  static Workplace of(SiteOptions options) {
    return of(options.houseRules());
  }

  static Workplace of(Optional<Path> houseRules) {
    return new Workplace(houseRules.map(HouseTables::load).orElseGet(Tables::load));
  }

  Tables tables() {
    return tables;
  }

  /** Reads the site; whoever does will ask the rules, which are made ready meanwhile. */
  Intake read(SiteOptions options) {
    return read(options.site(), options.settings());
  }

  /** Over the base that is taken, where the site file names several. */
  Intake read(Path site, List<Setting> settings) {
    CompiledRules.begin();
    SiteReader reader = reader();
    return chosen(
        StandardInput.isMeant(site)
            ? reader.readEach(standardInput.text(), settings)
            : reader.readEach(site, settings));
  }

  private Intake chosen(List<Intake> overEachBase) {
    if (overEachBase.size() == 1) {
      return overEachBase.get(0);
    }
    BaseChoice choice =
        engine
            .get()
            .choose(
                overEachBase.stream()
                    .map(each -> new NamedBase(each.baseFile(), each.site(), each.defaulted()))
                    .toList());
    return overEachBase.get(choice.place()).chosen(choice);
  }

  /** The same of a site whose text is in memory. */
  Intake read(SourceText site) {
    CompiledRules.begin();
    return chosen(reader().readEach(site, List.of()));
  }

  /**
   * The proposal for any of many sites, from tables, rules and words that all of them share; safe
   * to ask from several threads.
   *
   * @param settings of every site
   */
  Function<SiteLine, Proposal> proposing(List<Setting> settings, Optional<Yard> yard) {
    CompiledRules.begin();
    Engine same = yard.map(each -> engine.get().buyingFrom(each)).orElseGet(engine);
    SiteReader reader = reader();
    return site -> proposed(chosen(reader.readEach(site, settings)), same);
  }

  private SiteReader reader() {
    return new SiteReader(Vocabulary.of(tables))
        .refusing(base -> Buildable.validationErrors(base, tables));
  }

  Proposal propose(Intake intake) {
    return propose(intake, Optional.empty());
  }

  /** The same, for timber from that yard where there is one. */
  Proposal propose(Intake intake, Optional<Yard> yard) {
    return proposed(intake, yard.map(each -> engine.get().buyingFrom(each)).orElseGet(engine));
  }

  private static Proposal proposed(Intake intake, Engine engine) {
    Proposal proposal = engine.propose(intake.site(), intake.defaulted());
    return intake.choice().map(proposal::choosing).orElse(proposal);
  }

  /** A design whose text is in memory, and which can be put together. */
  DesignIntake readDesign(SourceText design) {
    return new DesignReader(Vocabulary.of(tables))
        .read(design, base -> Buildable.validationErrors(base, tables));
  }

  /** A design file that can be put together in the timber of the site. */
  DesignIntake readDesign(Path file, Intake site) {
    return new DesignReader(Vocabulary.of(tables))
        .read(file, design -> engine.get().validationErrors(design, site.site()));
  }

  Review check(Intake site, DesignIntake design) {
    return engine.get().check(site.site(), design.design(), design.defaulted(), site.defaulted());
  }

  /** Tables of hole depths on this engine. */
  DepthTables depths() {
    return new DepthTables(engine.get());
  }

  /** What of a design cannot be put together on a site. */
  List<ValidationError> cannotBe(BaseDesign design, Site site) {
    return engine.get().validationErrors(design, site);
  }

  Thresholds thresholds(Intake intake, Set<Question> questions) {
    return new ThresholdSearch(engine.get(), tables)
        .of(intake.site(), intake.defaulted(), questions);
  }

  /** What the rules of thumb say beside the calculation on one site. */
  List<ThumbTrial> thumbs(Intake intake, Map<Question, List<RuleNote>> thumbs) {
    return engine.get().thumbs(intake.site(), thumbs);
  }

  /**
   * Whole structures to choose from, on this engine.
   *
   * @param site the site file read with some of its values set
   */
  OptionSearch options(
      Function<List<String>, Intake> site, Optional<Yard> yard, Optional<PriceList> prices) {
    return new OptionSearch(engine.get(), tables, site, yard, prices);
  }

  /**
   * Small changes that somebody who builds would mention beside a proposal.
   *
   * @param yard of which the proposal is cut, where there is one
   * @param site the site file read with some of its values set
   */
  List<SmallChange> nearMisses(
      Intake intake, Proposal today, Optional<Yard> yard, Function<List<String>, Intake> site) {
    Engine same = yard.map(each -> engine.get().buyingFrom(each)).orElseGet(engine);
    return new NearMisses(same, tables, site).of(intake, today);
  }

  /** The least changes that lead to another answer, on this engine. */
  LeastChangeSearch leastChanges() {
    return new LeastChangeSearch(engine.get(), tables);
  }
}
