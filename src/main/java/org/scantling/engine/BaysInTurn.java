package org.scantling.engine;

import static org.scantling.reasons.Question.BAYS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.scantling.concurrent.BackgroundTask;
import org.scantling.concurrent.Cores;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.Fact;
import org.scantling.reasons.GoneBackTo;
import org.scantling.tables.Tables;

/** Other numbers of bays, tried one after the other where the first leads nowhere. */
final class BaysInTurn {
  private final Settling settling;
  private final Tables tables;

  BaysInTurn(Settling settling, Tables tables) {
    this.settling = settling;
    this.tables = tables;
  }

  /**
   * That pass where it ended, else that of the least number of bays above it that leads to an
   * answer, else the last that was tried.
   *
   * @param tried what led nowhere so far; what comes of this is added
   */
  Pass otherBays(DesignProblem problem, PhaseRunner trying, Pass first, List<Fact> tried) {
    if (!first.ended() && first.answered(BAYS)) {
      String option = first.answers().option(BAYS);
      boolean known = DeadEnds.ofBays(tried).stream().anyMatch(end -> end.option().equals(option));
      if (!known) {
        DeadEnds.add(DeadEnds.of(BAYS, first), tried);
      }
    }
    Pass last = first;
    int left = (int) Math.round(tables.thumb("bay.tried-in-turn").amount());
    // Each dead end takes one number of bays away, so this would end without a limit too.
    while (!last.ended() && last.answered(BAYS) && left > 0) {
      Optional<Ahead> ahead = left > 1 ? ahead(problem, trying, last, tried) : Optional.empty();
      last = next(problem, trying, tried);
      left--;
      if (ahead.isPresent() && !last.ended() && ahead.get().beyond(last)) {
        last = noted(ahead.get().pass().get(), tried);
        left--;
      }
    }
    return last.ended() && last != first && last.answered(BAYS)
        ? goneBack(problem, trying, last, tried)
        : last;
  }

  /** The number of bays that the rules want next; if it leads nowhere either, that is noted. */
  private Pass next(DesignProblem problem, PhaseRunner trying, List<Fact> tried) {
    return noted(settling.settle(problem, trying, tried), tried);
  }

  private static Pass noted(Pass pass, List<Fact> tried) {
    if (!pass.ended() && pass.answered(BAYS)) {
      DeadEnds.add(DeadEnds.of(BAYS, pass), tried);
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
                  facts.add(DeadEnds.of(BAYS, last).of(BAYS, next));
                  DesignProblem another = problem.forAnotherCore();
                  return new Ahead(
                      next,
                      BackgroundTask.of(
                          () ->
                              settling.settle(
                                  another, settling.runner(another, Detail.ANSWERS), facts)));
                });
  }

  /** The least of the numbers of bays that serves, among those passed over just before that one. */
  private Pass goneBack(DesignProblem problem, PhaseRunner trying, Pass serves, List<Fact> tried) {
    int found = Integer.parseInt(serves.answers().option(BAYS));
    int last =
        DeadEnds.ofBays(tried).stream()
            .mapToInt(end -> Integer.parseInt(end.option()))
            .filter(bays -> bays < found)
            .max()
            .orElse(found);
    for (int bays : problem.bayCounts()) {
      String option = Integer.toString(bays);
      if (last < bays && bays < found) {
        tried.add(new GoneBackTo(BAYS, option));
        Pass pass = settling.settle(problem, trying, tried);
        if (pass.answered(BAYS) && pass.answers().option(BAYS).equals(option)) {
          if (pass.ended()) {
            return pass;
          }
          tried.add(DeadEnds.of(BAYS, pass));
        }
      }
    }
    return serves;
  }
}
