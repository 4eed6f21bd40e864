package org.scantling.engine;

import static org.scantling.reasons.Question.BAYS;
import static org.scantling.reasons.Question.FOOTING_KIND;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.scantling.concurrent.BackgroundTask;
import org.scantling.concurrent.Lazy;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.ValidationError;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.GoneBackTo;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.ProvenCheck;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.TrackRecord;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * Proposes the resized structure for a site: runs the phases until nothing changes, and another
 * number of bays where one leads to a dead end. Checks a given design by the same phases, with its
 * answers fixed.
 */
public final class Engine {
  private static final int MOST_PASSES = 24;
  private static final int MOST_SHRINKINGS = 3;

  private final RuleBase rules;
  private final Tables tables;
  private final CommonRows rows;
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
    this.rows = new CommonRows(rules, tables);
    this.allowed = allowed;
    this.settled = settled;
    this.yard = yard;
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
  Proposal answer(Site site, List<String> assumptions, ResultCache cache) {
    return propose(site, assumptions, cache, Detail.ANSWERS);
  }

  private Proposal propose(Site site, List<String> assumptions, ResultCache cache, Detail detail) {
    DesignProblem plain = new DesignProblem(site, tables, cache).withYard(yard);
    DesignProblem problem =
        detail == Detail.FULL || plain.readsRecord()
            ? plain.withRecord(recordMeanwhile(site, cache))
            : plain;
    Tried tried = standing(problem, detail);
    return told(tried.problem(), tried.pass(), assumptions, detail).proposal();
  }

  /** On brackets as far as that serves, else on bases rated for moment, else on brackets anyhow. */
  private Tried standing(DesignProblem problem, Detail detail) {
    Tried hinged = tried(problem, detail, List.of());
    Optional<DeadEnd> nowhere = nowhere(hinged.pass());
    if (nowhere.isEmpty()) {
      return hinged;
    }
    Tried stiff = tried(problem, detail, List.of(nowhere.get()));
    return ended(stiff.pass())
        ? stiff
        : tried(problem, detail, List.of(new GoneBackTo(FOOTING_KIND, WayOfBuilding.BRACKET)));
  }

  /** What became of a problem, and the problem with what was tried beforehand. */
  private record Tried(DesignProblem problem, Pass pass) {}

  /**
   * @param standing ways of standing that led nowhere
   */
  private Tried tried(DesignProblem asked, Detail detail, List<Fact> standing) {
    DesignProblem problem = asked.withTrials(trials(asked, standing));
    PhaseRunner runner = runner(problem, detail);
    Pass first = settle(problem, runner, standing);
    PhaseRunner trying = detail == Detail.FULL ? runner(problem, Detail.ANSWERS) : runner;
    return new Tried(problem, wayOut(problem, runner, trying, first, standing));
  }

  /** Posts on brackets that no number of bays and no brace holds up. */
  private static Optional<DeadEnd> nowhere(Pass pass) {
    boolean hinged =
        !ended(pass)
            && pass.answers().has(FOOTING_KIND)
            && pass.answers().option(FOOTING_KIND).equals(WayOfBuilding.BRACKET);
    return hinged ? Optional.of(deadEnd(FOOTING_KIND, pass)) : Optional.empty();
  }

  /**
   * The pass itself where it ended well, else that of another number of bays, else of larger
   * timbers where a joint found no room in what there was, else the pass itself again. While these
   * are tried nobody reads what larger sizes would do, so only what serves is worked in full.
   *
   * @param trying for what is tried; the same as {@code runner} where nobody reads more
   * @param standing ways of standing that led nowhere before
   */
  private Pass wayOut(
      DesignProblem problem,
      PhaseRunner runner,
      PhaseRunner trying,
      Pass first,
      List<Fact> standing) {
    if (ended(first)) {
      return first;
    }
    List<Fact> tried = new ArrayList<>(standing);
    List<Fact> cramped = new ArrayList<>(standing);
    Pass found = otherBays(problem, trying, first, tried);
    // On brackets stiffer bases come before larger timbers.
    boolean otherwise = standing.isEmpty() && nowhere(first).isPresent();
    Optional<DeadEnd> small = otherwise ? Optional.empty() : crampedJoint(first);
    while (!ended(found) && small.isPresent()) {
      add(small.get(), cramped);
      tried = new ArrayList<>(cramped);
      Pass larger = settle(problem, trying, tried);
      found = otherBays(problem, trying, larger, tried);
      small = crampedJoint(larger);
    }
    if (!ended(found)) {
      return first;
    }
    return trying == runner ? found : settle(problem, runner, tried);
  }

  /**
   * That pass where it ended, else that of the least number of bays above it that leads to an
   * answer, else the last that was tried.
   *
   * @param tried what led nowhere so far; what comes of this is added
   */
  private Pass otherBays(DesignProblem problem, PhaseRunner trying, Pass first, List<Fact> tried) {
    Pass last = first;
    // Each dead end takes one number of bays away, so this ends.
    while (!ended(last) && last.answered(BAYS)) {
      add(deadEnd(BAYS, last), tried);
      last = settle(problem, trying, tried);
    }
    return ended(last) && last != first && last.answered(BAYS)
        ? goneBack(problem, trying, last, tried)
        : last;
  }

  private static void add(Fact end, List<Fact> tried) {
    if (tried.contains(end)) {
      throw new RuleBaseFault("no rule stops " + end.reference() + " from being tried again");
    }
    tried.add(end);
  }

  /** The least of the numbers of bays that serves, among those passed over just before that one. */
  private Pass goneBack(DesignProblem problem, PhaseRunner trying, Pass serves, List<Fact> tried) {
    int last = Integer.parseInt(((DeadEnd) tried.get(tried.size() - 1)).option());
    int found = Integer.parseInt(serves.answers().option(BAYS));
    for (int bays : problem.bayCounts()) {
      if (last < bays && bays < found) {
        String option = Integer.toString(bays);
        tried.add(new GoneBackTo(BAYS, option));
        Pass pass = settle(problem, trying, tried);
        if (pass.answered(BAYS) && pass.answers().option(BAYS).equals(option)) {
          if (ended(pass)) {
            return pass;
          }
          tried.add(deadEnd(BAYS, pass));
        }
      }
    }
    return serves;
  }

  /** The size that leaves a joint no room, where the table of checks says that a larger one may. */
  private Optional<DeadEnd> crampedJoint(Pass pass) {
    return pass.broken()
        .filter(broken -> pass.brokenAtJoints())
        .map(broken -> broken.closest().finding())
        .flatMap(stop -> stop instanceof Finding.Reject reject ? larger(reject) : Optional.empty())
        .filter(pass::answered)
        .map(size -> deadEnd(size, pass));
  }

  private Optional<Question> larger(Finding.Reject reject) {
    return tables.check(reject.check()).larger();
  }

  private static boolean ended(Pass pass) {
    return pass.broken().isEmpty() || pass.refused();
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
    return told(problem, settle(problem), assumptions, Detail.FULL).review(design.title(), unsaid);
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
        .map(place -> new DesignProblem(place, tables, cache).withDesign(site.base()))
        .map(problem -> settle(problem))
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
            .toList());
  }

  /**
   * Each rule of thumb by itself beside the calculation, on one site; none where the site has no
   * structure.
   *
   * @param thumbs the rules of thumb that bound each question from below
   */
  public List<ThumbTrial> thumbs(Site site, Map<Question, List<RuleNote>> thumbs) {
    Pass pass =
        settle(new DesignProblem(site, tables, new ResultCache(ResultCache.Retention.ONE_RUN)));
    return pass.broken().isPresent()
        ? List.of()
        : new ThumbTrials(tables, thumbs, pass.collected()).list();
  }

  /**
   * The whole structure for every number of bays that is tried, where the site asks for more than
   * the proven look.
   */
  private List<BayTrial> trials(DesignProblem problem, List<Fact> standing) {
    List<BayTrial> trials = new ArrayList<>();
    if (problem.site().preferences().keep().equals(DesignProblem.KEEP_LOOK)) {
      return trials;
    }
    for (int bays : problem.triedWhole()) {
      DesignProblem only = problem.withBays(bays);
      Pass pass = settle(only, runner(only, Detail.ANSWERS), standing);
      if (pass.broken().isEmpty()) {
        trials.add(new Parts(only, pass.answers()).trial());
      }
    }
    return trials;
  }

  private Pass settle(DesignProblem problem) {
    return settle(problem, runner(problem, Detail.FULL), List.of());
  }

  /**
   * The answers that stay as they are, or the question that has none.
   *
   * <p>Within one settling sizes only grow, so a size may be left that only an earlier size of
   * something else asked for. So what has settled is settled once more from there, free to shrink,
   * until nothing does. Where nothing shrinks, the first settling tells which check stopped a size:
   * it was worked before the larger one brought other timbers with it. Where two answers lead to
   * each other, the first stays: what the second shrank to would be for a cause that is gone;
   * unless the first is the one that tells such a cause.
   */
  private Pass settle(DesignProblem problem, PhaseRunner runner, List<Fact> tried) {
    Pass first = settle(problem, runner, problem.start(tried), tried);
    Pass pass = first;
    for (int count = 1; count <= MOST_SHRINKINGS && pass.broken().isEmpty(); count++) {
      Pass again = settle(problem, runner, pass.answers(), tried);
      if (again.broken().isPresent()) {
        return pass;
      }
      if (again.answers().equals(pass.answers())) {
        pass.tellAmongTimbersOf(again);
        return pass;
      }
      if (again.answers().equals(first.answers())) {
        return first.tellsWhatIsGone() && !pass.tellsWhatIsGone() ? pass : first;
      }
      pass = again;
    }
    return pass;
  }

  /**
   * Runs passes until the answers stay as they are, or one question has no answer.
   *
   * <p>What the braces ask of the timbers is known only after the first pass. So a joint that
   * nothing holds is given up only once the timbers stay as they are.
   */
  private Pass settle(DesignProblem problem, PhaseRunner runner, Answers start, List<Fact> tried) {
    Answers answers = start;
    Pass before = null;
    for (int count = 1; count <= MOST_PASSES; count++) {
      Pass pass = new Pass(problem, runner, answers, before, tried);
      pass.run();
      boolean stays = pass.answers().equals(answers);
      if (stays || pass.broken().isPresent() && !pass.brokenAtJoints()) {
        settled.accept(count);
        return pass;
      }
      answers = pass.answers();
      before = pass;
    }
    throw new RuleBaseFault("the answers still change after " + MOST_PASSES + " passes");
  }

  private PhaseRunner runner(DesignProblem problem, Detail detail) {
    return new PhaseRunner(rules, allowed, rows, problem, detail);
  }

  private static DeadEnd deadEnd(Question question, Pass pass) {
    Resolution.Unanswerable broken = pass.broken().orElseThrow();
    Finding closest = broken.closest().finding();
    String check = closest instanceof Finding.Reject reject ? reject.check() : closest.rule();
    double ratio = closest instanceof Finding.Reject reject ? reject.ratio() : 1;
    return new DeadEnd(
        question, pass.answers().option(question), broken.question().id(), check, ratio);
  }
}
