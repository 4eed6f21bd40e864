package org.scantling.causes;

import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Contribution;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.TimberRole;

/**
 * Which demand of the site breaks a question that found no answer: the one behind the changed
 * answer that moved the closest option's check most.
 */
public final class InfeasibleDemand {
  /** Read once: searches meet many refusals. */
  private static final BlamedDemands BLAMED = BlamedDemands.read();

  private final DesignProblem problem;
  private final Answers answers;
  private final Attribution attribution;

  public InfeasibleDemand(DesignProblem problem, Answers answers, Attribution attribution) {
    this.problem = problem;
    this.answers = answers;
    this.attribution = attribution;
  }

  /**
   * @param closest what stopped the option that came closest
   */
  public String demand(Question broken, Reason closest) {
    if (bracketsAsked() && broken.phase().compareTo(Phase.SUPPORT) >= 0) {
      return Demand.FOOTING.path();
    }
    if (overRock(broken)) {
      return Demand.ROCK_AT.path();
    }
    Optional<Demand> heldDown = heldDown(broken);
    if (heldDown.isPresent()) {
      return heldDown.get().path();
    }
    return ungraded(broken, closest)
        ? gradePath(broken)
        : moved(broken, closest).orElseGet(() -> BLAMED.nearest(broken)).path();
  }

  private Optional<Demand> moved(Question broken, Reason closest) {
    return attribution.of(broken, closest).stream()
        .map(Contribution::question)
        .flatMap(question -> BLAMED.behind(question).stream())
        .findFirst();
  }

  /** Where the site file says how large the member may be at most. */
  private Optional<Demand> heldDown(Question broken) {
    Site.Largest largest = problem.site().preferences().largest();
    return switch (broken) {
      case POST_SIZE -> largest.post().map(size -> Demand.LARGEST_POST);
      case HEADER_SIZE -> largest.header().map(size -> Demand.LARGEST_HEADER);
      case CROSSBEAM_SIZE -> largest.crossbeam().map(size -> Demand.LARGEST_CROSSBEAM);
      default -> Optional.empty();
    };
  }

  /** True where rock leaves no depth: it alone keeps a hole from being dug deeper by hand. */
  private boolean overRock(Question broken) {
    boolean standing = broken == Question.FOOTING_DEPTH || broken == Question.FOOTING_KIND;
    return standing && problem.site().ground().rockAtIn().isPresent();
  }

  /** Where the site file says the grade: of the role, if it does, else of all timber. */
  private String gradePath(Question broken) {
    return TimberRole.of(broken)
        .filter(role -> problem.ofRole(role.grade()).isPresent())
        .map(role -> "materials." + role.key() + ".grade")
        .orElse(Demand.GRADE.path());
  }

  /** True where the size that comes closest would serve, but nobody has graded it so. */
  private boolean ungraded(Question broken, Reason closest) {
    return broken.attribute().equals("size")
        && closest.finding() instanceof Finding.Reject reject
        && problem.context(answers).material(broken, reject.option()).isEmpty();
  }

  /** Brackets that the base does without: posts in the ground would have stood by themselves. */
  private boolean bracketsAsked() {
    return problem.site().preferences().footing().equals(WayOfBuilding.BRACKET)
        && !problem.site().base().posts().footing().equals(WayOfBuilding.BRACKET);
  }
}
