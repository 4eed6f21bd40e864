package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.scantling.answers.Answers;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Fixed;
import org.scantling.answers.ResultCache;
import org.scantling.answers.Stock;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.GivenLayout;
import org.scantling.design.BaseDesign;
import org.scantling.design.Bays;
import org.scantling.design.Site;
import org.scantling.reasons.Answer;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.reasons.RoleTimber;
import org.scantling.reasons.TrackRecord;
import org.scantling.tables.Market;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * One site with its base and the tables: everything that does not change while the engine works.
 */
public final class DesignProblem {
  /** The preference that tries no alternatives: the proven rhythm decides. */
  public static final String KEEP_LOOK = "look";

  /** The basis by which rules may read the record; they have no use for it by another. */
  private static final String BY_RECORD = "proven";

  private final SiteBasis basis;
  private final Overrides overrides;
  private final ResultCache cache;
  private final List<Fact> facts;

  /**
   * @param cache what was worked out before, with the same tables
   */
  public DesignProblem(Site site, Tables tables, ResultCache cache) {
    this(new SiteBasis(site, tables), cache, Overrides.none(site, tables));
  }

  private DesignProblem(SiteBasis basis, ResultCache cache, Overrides overrides) {
    this.basis = basis;
    this.cache = cache;
    this.overrides = overrides;
    this.facts = whole();
  }

  private List<Fact> whole() {
    List<Fact> all = new ArrayList<>(basis.facts());
    all.addAll(overrides.trials());
    if (readsRecord()) {
      record().ifPresent(record -> all.addAll(record.checks()));
    }
    return all;
  }

  /** The same problem with what came of trying every number of bays. */
  public DesignProblem withTrials(List<BayTrial> trials) {
    return trials.isEmpty() ? this : with(overrides.withTrials(trials));
  }

  /** The same problem with that number of bays and no other. */
  public DesignProblem withBays(int bays) {
    return with(overrides.withBays(bays));
  }

  /** The same problem with a cache of its own, for another core. */
  public DesignProblem forAnotherCore() {
    return new DesignProblem(basis, cache.another(), overrides);
  }

  /** The same problem with how the base has stood. */
  public DesignProblem withRecord(Supplier<Optional<TrackRecord>> record) {
    return with(overrides.withRecord(record));
  }

  /** The same problem with a structure that is decided already. */
  public DesignProblem withDesign(BaseDesign design) {
    return with(overrides.withDesign(Fixed.by(basis.record(design)), design.posts().along()));
  }

  /** The same problem with timber from a yard whose list is at hand. */
  public DesignProblem withYard(Optional<Yard> yard) {
    return yard.isEmpty() ? this : with(overrides.withYard(yard));
  }

  private DesignProblem with(Overrides others) {
    return new DesignProblem(basis, cache, others);
  }

  /** What a given design fixes; nothing where the structure is yet to be decided. */
  public Fixed fixed() {
    return overrides.fixed();
  }

  /** How a given design answers a question, if it does. */
  public Optional<Answer> fixed(Question question, Answers soFar) {
    return overrides.fixed().any()
        ? overrides.fixed().answer(question, soFar, fallIn(soFar), dropIn(soFar))
        : Optional.empty();
  }

  /** True where rules may ease a check by how the base has stood. */
  public boolean readsRecord() {
    return basis.site().preferences().basis().equals(BY_RECORD);
  }

  /** How the base has stood, where that is known. */
  public Optional<TrackRecord> record() {
    return overrides.record().get();
  }

  /** Where the first pass starts: the given design, else the base. */
  public Answers start(List<Fact> tried) {
    return overrides.fixed().any()
        ? overrides.fixed().start()
        : new FirstAnswers(basis.site(), basis.base().answers()).of(tried);
  }

  /** What the ground falls along one bay. */
  public double fallIn(Answers soFar) {
    return basis.site().ground().slopePercent() / 100 * soFar.number(Question.BAY);
  }

  /** What the ground falls from row to row, whichever is the lower. */
  public double dropIn(Answers soFar) {
    return Math.abs(basis.site().ground().across().fallIn(soFar.number(Question.ROW_SPACING)));
  }

  /**
   * The walk in so many bays: as the site or a given design tells them one by one, else alike but
   * for posts that have to move.
   */
  public Bays bays(int count) {
    return overrides
        .told()
        .filter(told -> told.count() == count)
        .orElseGet(() -> basis.site().walkway().into(count));
  }

  /** Bays that are not so many of one length, for these answers. */
  private Optional<Bays> uneven(Answers answers) {
    boolean moved = !basis.site().walkway().free().isEmpty() && answers.has(Question.BAYS);
    return overrides
        .told()
        .or(
            () ->
                moved
                    ? Optional.of(bays(Integer.parseInt(answers.option(Question.BAYS))))
                        .filter(bays -> !bays.even())
                    : Optional.empty());
  }

  /** Every number of bays that could divide the walk. */
  public List<Integer> bayCounts() {
    return overrides.bayCounts();
  }

  /**
   * The numbers of bays that are tried as whole structures.
   *
   * @param allowed false for a number that the rules stop
   */
  public List<Integer> triedWhole(IntPredicate allowed) {
    return new BayNumbers(basis.site(), basis.tables()).triedWhole(bayCounts(), allowed);
  }

  public Site site() {
    return basis.site();
  }

  public Tables tables() {
    return basis.tables();
  }

  public Stock stock() {
    return basis.stock();
  }

  public Offer offer() {
    return basis.offer();
  }

  public BaseRecord base() {
    return basis.base();
  }

  public ResultCache cache() {
    return cache;
  }

  /** The context in which checks are worked, with the answers so far. */
  public CheckContext context(Answers answers) {
    CheckContext context =
        new CheckContext(
            basis.tables(),
            overrides.yard(),
            basis.stock(),
            new GivenLayout(
                basis.site().ground().slopePercent() / 100,
                basis.site().ground().across(),
                basis.site().ground().rockAtIn(),
                uneven(answers)),
            cache,
            answers);
    return overrides.fixed().any() ? context : context.seatsOpen();
  }

  /** What one role is made of, where it is another than the rest. */
  public Optional<RoleTimber> ofRole(Question question) {
    return facts.stream()
        .filter(RoleTimber.class::isInstance)
        .map(RoleTimber.class::cast)
        .filter(each -> each.question() == question)
        .findFirst();
  }

  /** The site's demands and the base's answers. */
  public List<Fact> facts() {
    return facts;
  }

  /** True where the timber comes in metric sizes. */
  public boolean metric() {
    return Market.isMetric(basis.market());
  }

  public boolean railed() {
    return overrides.fixed().any()
        ? overrides.fixed().has(Question.RAIL_SIZE)
        : basis.site().base().sidePanels().isPresent();
  }

  /** The words that answer a question, least demanding first. */
  public List<String> words(Question question) {
    return new WordsOffered(basis.tables(), basis.stock()).of(question);
  }
}
