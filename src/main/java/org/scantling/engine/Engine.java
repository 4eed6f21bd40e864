package org.scantling.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.scantling.answers.ResultCache;
import org.scantling.concurrent.BackgroundTask;
import org.scantling.concurrent.Cores;
import org.scantling.concurrent.Lazy;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.ValidationError;
import org.scantling.facts.CommonRows;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.DesignValidation;
import org.scantling.problem.Detail;
import org.scantling.problem.OwnPlace;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.ProvenCheck;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.TrackRecord;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * Proposes the resized structure for a site, and checks a given design by the same phases, with its
 * answers fixed.
 */
public final class Engine {
  private final RuleBase rules;
  private final Tables tables;
  private final Settling settling;
  private final Predicate<String> allowed;
  private final IntConsumer settled;
  private final Optional<Yard> yard;

  public Engine(RuleBase rules, Tables tables) {
    this(rules, tables, id -> true);
  }

  /** An engine in which only some rules may fire; for tests that switch rules off. */
  Engine(RuleBase rules, Tables tables, Predicate<String> allowed) {
    this(rules, tables, allowed, passes -> {});
  }

  /** An engine that tells how many passes each settling took; for tests that count them. */
  Engine(RuleBase rules, Tables tables, Predicate<String> allowed, IntConsumer settled) {
    this(rules, tables, allowed, settled, Optional.empty());
  }

  private Engine(
      RuleBase rules,
      Tables tables,
      Predicate<String> allowed,
      IntConsumer settled,
      Optional<Yard> yard) {
    this.rules = rules;
    this.tables = tables;
    this.allowed = allowed;
    this.settled = settled;
    this.yard = yard;
    this.settling = new Settling(rules, new CommonRows(rules, tables), allowed, settled);
  }

  /** The same engine for timber from that yard, which tells how long the pieces are cut. */
  public Engine buyingFrom(Yard yard) {
    return new Engine(rules, tables, allowed, settled, Optional.of(yard));
  }

  /**
   * The structure for a site, or why there is none.
   *
   * @param assumptions paths of the site file that were left out
   */
  public Proposal propose(Site site, List<String> assumptions) {
    return propose(site, assumptions, new ResultCache(ResultCache.Retention.ONE_RUN));
  }

  /**
   * The same, with what runs of this engine have worked out before.
   *
   * @param cache from no other engine
   */
  Proposal propose(Site site, List<String> assumptions, ResultCache cache) {
    return propose(site, assumptions, cache, Detail.FULL);
  }

  /**
   * The same for a search that reads only what is answered and why: without the causes of changes,
   * checks and cautions, and without the base's record where no rule may read it.
   */
  public Proposal answer(Site site, List<String> assumptions, ResultCache cache) {
    return propose(site, assumptions, cache, Detail.ANSWERS);
  }

  /** The same with every check, for whole structures that are compared. */
  public Proposal checked(Site site, List<String> assumptions, ResultCache cache) {
    return propose(site, assumptions, cache, Detail.CHECKS);
  }

  private Proposal propose(Site site, List<String> assumptions, ResultCache cache, Detail detail) {
    DesignProblem plain = new DesignProblem(site, tables, cache).withYard(yard);
    DesignProblem problem =
        detail == Detail.FULL || plain.readsRecord()
            ? plain.withRecord(recordMeanwhile(site, cache))
            : plain;
    Detail read = detail == Detail.FULL ? Detail.FULL : Detail.ANSWERS;
    WaysOut.Found found = new WaysOut(settling, tables).of(problem, read);
    return told(found.problem(), found.pass(), assumptions, detail).proposal();
  }

  /**
   * Which of several bases a site starts from: the whole structure is answered over each, and the
   * rules say which gives way.
   *
   * @param bases two or more, in the order of the site file
   */
  public BaseChoice choose(List<NamedBase> bases) {
    List<Proposal> proposals =
        Cores.map(
            bases,
            each ->
                answer(
                    each.site(),
                    each.assumptions(),
                    new ResultCache(ResultCache.Retention.ONE_RUN)));
    return new BaseChooser(rules, allowed, tables).choose(bases, proposals);
  }

  /**
   * Every check of a design on a site, and every limit of the rules that it breaks; resizes
   * nothing.
   *
   * <p>Side panels and braces that the design file does not speak of are taken from the site's
   * base.
   *
   * @param design the fixed design, without {@link #validationErrors}
   * @param unsaid paths of the design file that were left out
   * @param assumptions paths of the site file that were left out
   */
  public Review check(Site site, BaseDesign design, List<String> unsaid, List<String> assumptions) {
    ResultCache cache = new ResultCache(ResultCache.Retention.ONE_RUN);
    DesignProblem problem =
        new DesignProblem(site, tables, cache)
            .withRecord(recordMeanwhile(site, cache))
            .withDesign(design.completedBy(site.base(), unsaid));
    return told(problem, settling.settle(problem), assumptions, Detail.FULL)
        .review(design.title(), unsaid);
  }

  /**
   * A structure that is decided but for its holes, with how deep and how wide they must be by the
   * rules that a proposal goes by; without causes and cautions.
   *
   * @param design without {@link #validationErrors} but for the depth of its holes, which is not
   *     read
   * @param cache from no other engine
   */
  public Review holes(Site site, BaseDesign design, ResultCache cache) {
    DesignProblem plain = new DesignProblem(site, tables, cache);
    DesignProblem problem =
        (plain.readsRecord() ? plain.withRecord(recordMeanwhile(site, cache)) : plain)
            .withDesign(design.withoutHoles());
    PhaseRunner runner = settling.runner(problem, Detail.ANSWERS);
    return new Assembly(
            problem, settling.settle(problem, runner, List.of()), List.of(), Detail.ANSWERS)
        .review(design.title(), List.of());
  }

  private static Assembly told(
      DesignProblem problem, Pass pass, List<String> assumptions, Detail detail) {
    if (detail == Detail.FULL) {
      pass.caution();
    }
    return new Assembly(problem, pass, assumptions, detail);
  }

  /** What of a design cannot be put together, or not worked out in the timber of the site. */
  public List<ValidationError> validationErrors(BaseDesign design, Site site) {
    return DesignValidation.of(design, site, tables);
  }

  /** What one run keeps is its own; where runs share a cache, the record is worked out in turn. */
  private Supplier<Optional<TrackRecord>> recordMeanwhile(Site site, ResultCache cache) {
    return cache.shared()
        ? new Lazy<>(() -> record(site, cache))
        : BackgroundTask.of(() -> record(site, cache.another()));
  }

  /** The base's own checks where it has stood, by the same path as any fixed design. */
  private Optional<TrackRecord> record(Site site, ResultCache cache) {
    return OwnPlace.of(site)
        .filter(place -> validationErrors(site.base(), place).isEmpty())
        .map(place -> new DesignProblem(place, tables.elsewhere(), cache).withDesign(site.base()))
        .map(problem -> settling.settle(problem))
        .filter(pass -> pass.broken().isEmpty())
        .map(pass -> record(site.base().proven().orElseThrow(), pass));
  }

  private static TrackRecord record(BaseDesign.Proven stood, Pass pass) {
    int sinceYear = stood.builtYear();
    return new TrackRecord(
        sinceYear,
        stood.slopePercent(),
        pass.confirmation().checks().stream()
            .map(each -> new ProvenCheck(each.id(), each.check().ratio(), sinceYear))
            .toList(),
        stood.record());
  }

  /**
   * Each rule of thumb by itself beside the calculation, on one site; none where the site has no
   * structure.
   *
   * @param thumbs the rules of thumb that bound each question from below
   */
  public List<ThumbTrial> thumbs(Site site, Map<Question, List<RuleNote>> thumbs) {
    DesignProblem problem =
        new DesignProblem(site, tables, new ResultCache(ResultCache.Retention.ONE_RUN));
    Pass pass = new WaysOut(settling, tables).of(problem, Detail.FULL).pass();
    return pass.broken().isPresent()
        ? List.of()
        : new ThumbTrials(tables, thumbs, pass.collected()).list();
  }
}
