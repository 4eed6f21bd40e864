package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.HeaderCuts;
import org.scantling.candidates.TopLines;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;

/** The questions that a structure has at all, with the answers so far. */
final class AskedQuestions {
  private final DesignProblem problem;
  private final Answers answers;
  private final CheckContext context;

  AskedQuestions(DesignProblem problem, Answers answers, CheckContext context) {
    this.problem = problem;
    this.answers = answers;
    this.context = context;
  }

  List<Question> of(Phase phase) {
    List<Question> asked = new ArrayList<>();
    for (Question question : Question.values()) {
      if (question.phase() == phase && applies(question)) {
        asked.add(question);
      }
    }
    return asked;
  }

  private boolean applies(Question question) {
    return switch (question) {
      case RAIL_SIZE, RAIL_HEIGHT, RAIL_NOTCH, PICKETS, RAIL_JOINT -> problem.railed();
      case BRACE_SIZE, BRACE_LEG, BRACE_JOINT ->
          answers.has(BRACING) && answers.option(BRACING).equals(WayOfBuilding.KNEE_BRACES);
      case CROSSBEAMS_AT_POSTS ->
          context.onBrackets()
              && answers.has(BRACING)
              && answers.option(BRACING).equals(WayOfBuilding.KNEE_BRACES);
      case HEADER_STEP ->
          TopLines.stepped(answers)
              && answers.has(HEADER_STYLE)
              && answers.option(HEADER_STYLE).equals(WayOfBuilding.ON_TOP);
      case BASE_JOINT -> context.onMomentBases();
      case HEADER_SPLICE -> HeaderCuts.of(problem.context(answers)).needed();
      case POST_SPECIES, HEADER_SPECIES, CROSSBEAM_SPECIES, RAIL_SPECIES, BRACE_SPECIES ->
          ofItsOwn(question);
      case POST_GRADE, HEADER_GRADE, CROSSBEAM_GRADE, RAIL_GRADE, BRACE_GRADE ->
          ofItsOwn(question) || stepsUp(question);
      default -> true;
    };
  }

  /** True where the site file, the base or a given design has the role of other timber. */
  boolean ofItsOwn(Question question) {
    return problem.ofRole(question).isPresent() || problem.fixed().has(question);
  }

  private boolean stepsUp(Question grade) {
    return context.grading().stepsUp(TimberRole.of(grade).orElseThrow());
  }
}
