package org.scantling.engine;

import static org.scantling.reasons.Question.BAYS;

import java.util.List;
import java.util.Optional;
import org.scantling.concurrent.Cores;
import org.scantling.facts.Parts;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;

/** Numbers of bays worked as whole structures, to compare what each comes to. */
final class WholeStructures {
  private final Settling settling;

  WholeStructures(Settling settling) {
    this.settling = settling;
  }

  /**
   * What the whole structure comes to, or where it ends, for every number of bays that is tried,
   * where the site asks for more than the proven look.
   *
   * @param known numbers that are not tried
   */
  List<Fact> of(DesignProblem problem, List<Fact> standing, List<DeadEnd> known) {
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
        ? Optional.of(DeadEnds.of(BAYS, pass))
        : Optional.empty();
  }

  /** True for a number of bays that no rule stops among all others. */
  private static boolean allowed(Pass pass, String bays) {
    return pass.resolution(BAYS)
        .filter(
            resolution ->
                resolution.rejected().stream()
                    .noneMatch(each -> ((Finding.Reject) each.finding()).option().equals(bays)))
        .isPresent();
  }
}
