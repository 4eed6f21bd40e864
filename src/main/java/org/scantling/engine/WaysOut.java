package org.scantling.engine;

import static org.scantling.reasons.Question.BAYS;
import static org.scantling.reasons.Question.CROSSBEAMS_AT_POSTS;
import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.FOOTING_KIND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.scantling.answers.Answers;
import org.scantling.concurrent.BackgroundTask;
import org.scantling.concurrent.Cores;
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
import org.scantling.rulebase.RuleBaseFault;
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

  WaysOut(Settling settling, Tables tables) {
    this.settling = settling;
    this.tables = tables;
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
      if (ended(doubled.pass())) {
        return doubled;
      }
      last = nowhere(doubled.pass()).isPresent() ? doubled.pass() : last;
    }
    nowhere(last).ifPresent(standing::add);
    Found stiff = tried(problem, detail, standing);
    return ended(stiff.pass())
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
      return ofKind(DeadEnd.class, ends).stream().filter(end -> end.question() == BAYS).toList();
    }

    /** Those that broke at what two crossbeams side by side do not mend. */
    List<DeadEnd> whateverCrossbeams() {
      return bays().stream().filter(end -> !OF_CROSSBEAMS.contains(end.broken())).toList();
    }

    /** The first that broke because a crossbeam found no size or the bolt of a brace no room. */
    Optional<DeadEnd> atCrossbeams() {
      return ofKind(DeadEnd.class, ends).stream()
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
    List<Fact> whole = wholeStructures(asked, standing, known);
    DesignProblem problem = asked.withTrials(ofKind(BayTrial.class, whole));
    PhaseRunner runner = settling.runner(problem, detail);
    Pass first = settling.settle(problem, runner, standing);
    PhaseRunner trying = detail == Detail.FULL ? settling.runner(problem, Detail.ANSWERS) : runner;
    List<Fact> ends = new ArrayList<>(standing);
    ends.addAll(known);
    ends.addAll(ofKind(DeadEnd.class, whole));
    Pass found = ended(first) ? first : wayOut(problem, runner, trying, first, standing, ends);
    return new Found(problem, found, ends);
  }

  /** True for a number of bays that no rule stops among all others. */
  private static boolean allowed(Pass pass, String bays) {
    return pass.answered(BAYS)
        && pass.resolutions().get(BAYS).rejected().stream()
            .noneMatch(each -> ((Finding.Reject) each.finding()).option().equals(bays));
  }

  private static <T> List<T> ofKind(Class<T> kind, List<Fact> facts) {
    return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Posts on brackets that no number of bays and no brace holds up. */
  private static Optional<DeadEnd> nowhere(Pass pass) {
    boolean hinged = !ended(pass) && is(pass, FOOTING_KIND, WayOfBuilding.BRACKET);
    return hinged ? Optional.of(deadEnd(FOOTING_KIND, pass)) : Optional.empty();
  }

  /** True where a check of the braces stopped smaller crossbeams, single ones at the posts. */
  private static boolean grownForBraces(DesignProblem problem, Pass pass) {
    return pass.broken().isEmpty()
        && is(pass, FOOTING_KIND, WayOfBuilding.BRACKET)
        && mayDouble(problem, pass)
        && pass.resolutions().get(CROSSBEAM_SIZE).reasons().get(0).finding()
            instanceof Finding.Reject reject
        && reject.check().startsWith(OF_BRACES);
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
    Pass found = otherBays(problem, trying, first, tried);
    // On brackets stiffer bases come before larger timbers.
    boolean otherwise =
        standing.stream().noneMatch(GoneBackTo.class::isInstance) && nowhere(first).isPresent();
    Optional<DeadEnd> small = otherwise ? Optional.empty() : crampedJoint(first);
    while (!ended(found) && small.isPresent()) {
      add(small.get(), cramped);
      tried = new ArrayList<>(cramped);
      Pass larger = settling.settle(problem, trying, tried);
      found = otherBays(problem, trying, larger, tried);
      small = crampedJoint(larger);
    }
    if (!ended(found)) {
      return first;
    }
    return trying == runner ? found : settling.settle(problem, runner, tried);
  }

  /**
   * That pass where it ended, else that of the least number of bays above it that leads to an
   * answer, else the last that was tried.
   *
   * @param tried what led nowhere so far; what comes of this is added
   */
  private Pass otherBays(DesignProblem problem, PhaseRunner trying, Pass first, List<Fact> tried) {
    if (!ended(first) && first.answered(BAYS)) {
      boolean known = deadBays(tried).contains(first.answers().option(BAYS));
      if (!known) {
        add(deadEnd(BAYS, first), tried);
      }
    }
    Pass last = first;
    int left = (int) Math.round(tables.thumb("bay.tried-in-turn").amount());
    // Each dead end takes one number of bays away, so this would end without a limit too.
    while (!ended(last) && last.answered(BAYS) && left > 0) {
      Optional<Ahead> ahead = left > 1 ? ahead(problem, trying, last, tried) : Optional.empty();
      last = next(problem, trying, tried);
      left--;
      if (ahead.isPresent() && !ended(last) && ahead.get().beyond(last)) {
        last = noted(ahead.get().pass().get(), tried);
        left--;
      }
    }
    return ended(last) && last != first && last.answered(BAYS)
        ? goneBack(problem, trying, last, tried)
        : last;
  }

  /** The number of bays that the rules want next; if it leads nowhere either, that is noted. */
  private Pass next(DesignProblem problem, PhaseRunner trying, List<Fact> tried) {
    return noted(settling.settle(problem, trying, tried), tried);
  }

  private static Pass noted(Pass pass, List<Fact> tried) {
    if (!ended(pass) && pass.answered(BAYS)) {
      add(deadEnd(BAYS, pass), tried);
    }
    return pass;
  }

  /**
   * The number of bays after the next one, worked on another core in case that leads nowhere.
   *
   * @param next the next one
   */
  private record Ahead(String next, Supplier<Pass> pass) {
    boolean beyond(Pass last) {
      return last.answered(BAYS) && last.answers().option(BAYS).equals(next);
    }
  }

  /** None where runs that share a cache are spread over the cores already. */
  private Optional<Ahead> ahead(
      DesignProblem problem, PhaseRunner trying, Pass last, List<Fact> tried) {
    return problem.cache().shared() || !Cores.several()
        ? Optional.empty()
        : settling
            .nextBays(problem, trying, last.answers(), tried)
            .map(
                next -> {
                  List<Fact> facts = new ArrayList<>(tried);
                  // Where it breaks will be told by what is worked of it; here it is only left out.
                  facts.add(deadEnd(BAYS, last).of(BAYS, next));
                  DesignProblem another = problem.forAnotherCore();
                  return new Ahead(
                      next,
                      BackgroundTask.of(
                          () ->
                              settling.settle(
                                  another, settling.runner(another, Detail.ANSWERS), facts)));
                });
  }

  private static void add(Fact end, List<Fact> tried) {
    if (tried.contains(end)) {
      throw new RuleBaseFault("no rule stops " + end.reference() + " from being tried again");
    }
    tried.add(end);
  }

  /** The least of the numbers of bays that serves, among those passed over just before that one. */
  private Pass goneBack(DesignProblem problem, PhaseRunner trying, Pass serves, List<Fact> tried) {
    int found = Integer.parseInt(serves.answers().option(BAYS));
    int last =
        deadBays(tried).stream()
            .mapToInt(Integer::parseInt)
            .filter(bays -> bays < found)
            .max()
            .orElse(found);
    for (int bays : problem.bayCounts()) {
      String option = Integer.toString(bays);
      if (last < bays && bays < found) {
        tried.add(new GoneBackTo(BAYS, option));
        Pass pass = settling.settle(problem, trying, tried);
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

  /** The numbers of bays that led nowhere. */
  private static List<String> deadBays(List<Fact> tried) {
    return ofKind(DeadEnd.class, tried).stream()
        .filter(end -> end.question() == BAYS)
        .map(DeadEnd::option)
        .toList();
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
   * What the whole structure comes to, or where it ends, for every number of bays that is tried,
   * where the site asks for more than the proven look.
   *
   * @param known numbers that are not tried
   */
  private List<Fact> wholeStructures(
      DesignProblem problem, List<Fact> standing, List<DeadEnd> known) {
    if (problem.site().preferences().keep().equals(DesignProblem.KEEP_LOOK)) {
      return List.of();
    }
    Pass preferred = settling.settle(problem, settling.runner(problem, Detail.ANSWERS), standing);
    List<Integer> tried =
        problem.triedWhole(bays -> allowed(preferred, Integer.toString(bays))).stream()
            .filter(bays -> known.stream().noneMatch(end -> end.option().equals(bays.toString())))
            .toList();
    // One run has all cores to itself; runs that share a cache are spread over them already.
    List<Optional<Fact>> found =
        problem.cache().shared()
            ? tried.stream().map(bays -> whole(problem.withBays(bays), standing)).toList()
            : Cores.map(tried, bays -> whole(problem.forAnotherCore().withBays(bays), standing));
    return found.stream().flatMap(Optional::stream).toList();
  }

  /** Neither where the rules do not allow that number. */
  private Optional<Fact> whole(DesignProblem only, List<Fact> standing) {
    Pass pass = settling.settle(only, settling.runner(only, Detail.ANSWERS), standing);
    if (pass.broken().isEmpty()) {
      return Optional.of(new Parts(only, pass.answers()).trial());
    }
    return pass.answered(BAYS) && !pass.refused()
        ? Optional.of(deadEnd(BAYS, pass))
        : Optional.empty();
  }

  /** What another question made of the answer to one. */
  private static DeadEnd deadEnd(Question question, Pass pass, Question grown) {
    Finding.Reject stopped =
        (Finding.Reject) pass.resolutions().get(grown).reasons().get(0).finding();
    return new DeadEnd(
        question, pass.answers().option(question), grown.id(), stopped.check(), stopped.ratio());
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
