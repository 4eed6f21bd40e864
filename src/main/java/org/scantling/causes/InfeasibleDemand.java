package org.scantling.causes;

import java.util.Map;
import java.util.Optional;
import org.scantling.answers.Answers;
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
  /** Where the site file asks for what an answer is, or for what it follows from by measure. */
  private static final Map<Question, Demand> ASKED =
      Map.ofEntries(
          Map.entry(Question.FROST_DEPTH, Demand.FROST_DEPTH),
          Map.entry(Question.GROUND_SNOW, Demand.GROUND_SNOW),
          Map.entry(Question.WIND_SPEED, Demand.WIND_SPEED),
          Map.entry(Question.EXPOSURE, Demand.EXPOSURE),
          Map.entry(Question.SOIL, Demand.SOIL),
          Map.entry(Question.VINE, Demand.VINE),
          Map.entry(Question.SPECIES, Demand.SPECIES),
          Map.entry(Question.GRADE, Demand.GRADE),
          Map.entry(Question.ROW_SPACING, Demand.CLEAR_WIDTH),
          Map.entry(Question.POST_HEIGHT, Demand.HEADROOM),
          Map.entry(Question.BAYS, Demand.WALK_LENGTH),
          Map.entry(Question.BAY, Demand.WALK_LENGTH),
          Map.entry(Question.HEADER_STYLE, Demand.HEADER),
          Map.entry(Question.FOOTING_KIND, Demand.FOOTING));

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
    return ungraded(broken, closest)
        ? gradePath(broken)
        : moved(broken, closest).orElseGet(() -> nearest(broken)).path();
  }

  private Optional<Demand> moved(Question broken, Reason closest) {
    return attribution.of(broken, closest).stream()
        .map(Contribution::question)
        .filter(ASKED::containsKey)
        .map(ASKED::get)
        .findFirst();
  }

  /** What to try first where no calculation tells, or where the base itself would not do. */
  private static Demand nearest(Question broken) {
    return switch (broken.phase()) {
      case CROSSBEAMS -> Demand.CLEAR_WIDTH;
      case HEADERS -> Demand.GROUND_SNOW;
      case HEIGHT -> Demand.HEADROOM;
      case POSTS, SIDES, FOOTINGS, JOINTS -> Demand.WIND_SPEED;
      default -> Demand.WALK_LENGTH;
    };
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
