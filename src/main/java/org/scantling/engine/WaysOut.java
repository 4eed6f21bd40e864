package org.scantling.engine;

import static org.scantling.reasons.Question.CROSSBEAMS_AT_POSTS;
import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.FOOTING_KIND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.WayOfBuilding;
import org.scantling.facts.Parts;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.AtPostsTrial;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.GoneBackTo;
import org.scantling.reasons.Question;
import org.scantling.tables.CheckRow;
import org.scantling.tables.Tables;

/**
 * What is tried where the first answers lead nowhere: another number of bays, larger timbers where
 * a joint found no room, another way of standing.
 */
final class WaysOut {
  /** How the checks of a crossbeam begin that braces add. */
  private static final String OF_BRACES = "crossbeam.brace-";

  /** What two crossbeams side by side may mend where it breaks. */
  private static final List<String> OF_CROSSBEAMS =
      List.of(CROSSBEAM_SIZE.id(), Question.BRACE_JOINT.id());

  private final Settling settling;
  private final Tables tables;
  private final BaysInTurn turns;
  private final WholeStructures structures;

  WaysOut(Settling settling, Tables tables) {
    this.settling = settling;
    this.tables = tables;
    this.turns = new BaysInTurn(settling, tables);
    this.structures = new WholeStructures(settling);
  }

  /**
   * On brackets as far as that serves, with one crossbeam at each row of posts and then with two,
   * else on bases rated for moment, else on brackets anyhow.
   */
  Found of(DesignProblem problem, Detail detail) {
    Found hinged = tried(problem, detail, List.of());
    if (nowhere(hinged.pass()).isEmpty()) {
      return grownForBraces(problem, hinged.pass()) ? orDoubled(problem, detail, hinged) : hinged;
    }
    List<Fact> standing = new ArrayList<>();
    Pass last = hinged.pass();
    Optional<DeadEnd> atCrossbeams = hinged.atCrossbeams();
    if (mayDouble(problem, last) && atCrossbeams.isPresent()) {
      standing.add(atCrossbeams.get().of(CROSSBEAMS_AT_POSTS, WayOfBuilding.SINGLE_AT_POSTS));
      Found doubled = tried(problem, detail, standing, hinged.whateverCrossbeams());
      if (doubled.pass().ended()) {
        return doubled;
      }
      last = nowhere(doubled.pass()).isPresent() ? doubled.pass() : last;
    }
    nowhere(last).ifPresent(standing::add);
    Found stiff = tried(problem, detail, standing);
    return stiff.pass().ended()
        ? stiff
        : tried(
            problem,
            detail,
            List.of(new GoneBackTo(FOOTING_KIND, WayOfBuilding.BRACKET)),
            hinged.bays());
  }

  /**
   * What became of a problem, and the problem with what was tried beforehand.
   *
   * @param ends numbers of bays that led nowhere, with what broke
   */
  record Found(DesignProblem problem, Pass pass, List<Fact> ends) {
    /** Numbers of bays that led nowhere. */
    List<DeadEnd> bays() {
      return DeadEnds.ofBays(ends);
    }

    /** Those that broke at what two crossbeams side by side do not mend. */
    List<DeadEnd> whateverCrossbeams() {
      return bays().stream().filter(end -> !OF_CROSSBEAMS.contains(end.broken())).toList();
    }

    /** The first that broke because a crossbeam found no size or the bolt of a brace no room. */
    Optional<DeadEnd> atCrossbeams() {
      return DeadEnds.ofKind(DeadEnd.class, ends).stream()
          .filter(each -> OF_CROSSBEAMS.contains(each.broken()))
          .findFirst();
    }
  }

  private Found tried(DesignProblem asked, Detail detail, List<Fact> standing) {
    return tried(asked, detail, standing, List.of());
  }

  /**
   * @param standing ways of standing that led nowhere
   * @param known numbers of bays that lead nowhere this way either
   */
  private Found tried(
      DesignProblem asked, Detail detail, List<Fact> standing, List<DeadEnd> known) {
    List<Fact> whole = structures.of(asked, standing, known);
    DesignProblem problem = asked.withTrials(DeadEnds.ofKind(BayTrial.class, whole));
    PhaseRunner runner = settling.runner(problem, detail);
    Pass first = settling.settle(problem, runner, standing);
    PhaseRunner trying = detail == Detail.FULL ? settling.runner(problem, Detail.ANSWERS) : runner;
    List<Fact> ends = new ArrayList<>(standing);
    ends.addAll(known);
    ends.addAll(DeadEnds.ofKind(DeadEnd.class, whole));
    Pass found = first.ended() ? first : wayOut(problem, runner, trying, first, standing, ends);
    return new Found(problem, found, ends);
  }

  /** Posts on brackets that no number of bays and no brace holds up. */
  private static Optional<DeadEnd> nowhere(Pass pass) {
    boolean hinged = !pass.ended() && is(pass, FOOTING_KIND, WayOfBuilding.BRACKET);
    return hinged ? Optional.of(DeadEnds.of(FOOTING_KIND, pass)) : Optional.empty();
  }

  private static boolean stoppedBy(Resolution.Answered answered, String checks) {
    return answered.reasons().get(0).finding() instanceof Finding.Reject reject
        && reject.check().startsWith(checks);
  }

  /** True where a check of the braces stopped smaller crossbeams, single ones at the posts. */
  private static boolean grownForBraces(DesignProblem problem, Pass pass) {
    return pass.broken().isEmpty()
        && is(pass, FOOTING_KIND, WayOfBuilding.BRACKET)
        && mayDouble(problem, pass)
        && pass.resolution(CROSSBEAM_SIZE).filter(size -> stoppedBy(size, OF_BRACES)).isPresent();
  }

  /**
   * That answer, or the one with two crossbeams side by side at the posts where the rules prefer
   * what comes of both.
   */
  private Found orDoubled(DesignProblem problem, Detail detail, Found single) {
    List<Fact> without = List.of(deadEnd(CROSSBEAMS_AT_POSTS, single.pass(), CROSSBEAM_SIZE));
    Found doubled = tried(problem, Detail.ANSWERS, without);
    if (!doubled.pass().broken().isEmpty()) {
      return single;
    }
    List<Fact> known = new ArrayList<>(List.of(trial(single), trial(doubled)));
    known.addAll(doubled.bays());
    DesignProblem same = doubled.problem();
    Pass better = settling.settle(same, settling.runner(same, detail), known);
    boolean preferred =
        better.broken().isEmpty()
            && is(better, CROSSBEAMS_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS);
    return preferred ? new Found(same, better, known) : single;
  }

  private static AtPostsTrial trial(Found found) {
    Answers answers = found.pass().answers();
    String size = answers.option(CROSSBEAM_SIZE);
    return new AtPostsTrial(
        answers.option(CROSSBEAMS_AT_POSTS),
        size,
        found.problem().stock().row(size).thicknessIn(),
        new Parts(found.problem(), answers).trial().timberIn3());
  }

  /** True where single crossbeams at the posts are tried, and nobody asks that they stay so. */
  private static boolean mayDouble(DesignProblem problem, Pass pass) {
    return is(pass, CROSSBEAMS_AT_POSTS, WayOfBuilding.SINGLE_AT_POSTS)
        && !problem.site().preferences().crossbeamsAtPosts().equals(WayOfBuilding.SINGLE_AT_POSTS);
  }

  private static boolean is(Pass pass, Question question, String option) {
    return pass.answers().has(question) && pass.answers().option(question).equals(option);
  }

  /**
   * The pass of another number of bays, else of larger timbers where a joint found no room in what
   * there was, else the pass itself again. While these are tried nobody reads what larger sizes
   * would do, so only what serves is worked in full.
   *
   * @param trying for what is tried; the same as {@code runner} where nobody reads more
   * @param standing ways of standing that led nowhere before
   * @param ends what led nowhere; numbers of bays are added
   */
  private Pass wayOut(
      DesignProblem problem,
      PhaseRunner runner,
      PhaseRunner trying,
      Pass first,
      List<Fact> standing,
      List<Fact> ends) {
    List<Fact> tried = ends;
    List<Fact> cramped = new ArrayList<>(standing);
    Pass found = turns.otherBays(problem, trying, first, tried);
    // On brackets stiffer bases come before larger timbers.
    boolean otherwise =
        standing.stream().noneMatch(GoneBackTo.class::isInstance) && nowhere(first).isPresent();
    Optional<DeadEnd> small = otherwise ? Optional.empty() : crampedJoint(first);
    while (!found.ended() && small.isPresent()) {
      DeadEnds.add(small.get(), cramped);
      tried = new ArrayList<>(cramped);
      Pass larger = settling.settle(problem, trying, tried);
      found = turns.otherBays(problem, trying, larger, tried);
      small = crampedJoint(larger);
    }
    if (!found.ended()) {
      return first;
    }
    return trying == runner ? found : settling.settle(problem, runner, tried);
  }

  /** The size that leaves a joint no room, where the table of checks says that a larger one may. */
  private Optional<DeadEnd> crampedJoint(Pass pass) {
    return pass.broken()
        .filter(broken -> pass.brokenAtJoints())
        .map(broken -> broken.closest().finding())
        .flatMap(stop -> stop instanceof Finding.Reject reject ? larger(reject) : Optional.empty())
        .filter(pass::answered)
        .map(size -> DeadEnds.of(size, pass));
  }

  /** What stopped it may be a row of another table, such as the lengths that are sold. */
  private Optional<Question> larger(Finding.Reject reject) {
    return tables.checks().find(reject.check()).flatMap(CheckRow::larger);
  }

  /** What another question made of the answer to one. */
  private static DeadEnd deadEnd(Question question, Pass pass, Question grown) {
    Finding.Reject stopped =
        (Finding.Reject) pass.resolution(grown).orElseThrow().reasons().get(0).finding();
    return new DeadEnd(
        question, pass.answers().option(question), grown.id(), stopped.check(), stopped.ratio());
  }
}
