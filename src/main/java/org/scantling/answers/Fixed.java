package org.scantling.answers;

import static org.scantling.reasons.Question.*;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;

/**
 * The answers that a given design fixes: no rule may change them, only find fault with them. What a
 * design leaves open, and what only the site can say, is answered as ever.
 */
public final class Fixed {
  private final Map<Question, Answer> answers = new EnumMap<>(Question.class);
  private final Answers start;

  private Fixed(Answers start) {
    this.start = start;
  }

  /** A structure that is yet to be decided: everything is open. */
  public static Fixed nothing() {
    return new Fixed(Answers.of(Map.of()));
  }

  /** A structure that is decided already. */
  public static Fixed by(BaseRecord design) {
    Fixed fixed = new Fixed(design.answers());
    for (Proven each : design.facts()) {
      if (each.question().phase().compareTo(Phase.LOADS) > 0 || ofTimber(each.question())) {
        design.answers().find(each.question()).ifPresent(fixed::fix);
      }
    }
    // No design file speaks of blocks: whether crossbeams need them is for the rules to say.
    fixed.answers.remove(CROSSBEAM_BLOCKING);
    // On a bracket the file may leave the depth of the pier at nothing, which is no depth.
    if (!(fixed.start.number(FOOTING_DEPTH) > 0)) {
      fixed.answers.remove(FOOTING_DEPTH);
    }
    return fixed;
  }

  /** What it is made of goes with a design; the rest of the first phase is the site's. */
  private static boolean ofTimber(Question question) {
    return question == SPECIES || question == GRADE || TimberRole.of(question).isPresent();
  }

  private void fix(Answer answer) {
    answers.put(answer.question(), answer);
  }

  /** True where there is a design at all. */
  public boolean any() {
    return !answers.isEmpty();
  }

  public boolean has(Question question) {
    return answers.containsKey(question);
  }

  /** Where the first pass starts. */
  public Answers start() {
    return start;
  }

  /**
   * How the design answers a question.
   *
   * @param fallIn what the ground falls along a bay; where the top is stepped, that much of the
   *     headroom is lost at the upper end of a step
   * @param dropIn how much lower one row stands than the other, which is lost along the higher one
   */
  public Optional<Answer> answer(Question question, Answers soFar, double fallIn, double dropIn) {
    Optional<Answer> fixed = Optional.ofNullable(answers.get(question));
    boolean stepped = soFar.has(TOP_LINE) && soFar.option(TOP_LINE).equals(WayOfBuilding.STEPPED);
    double lostIn = (stepped ? fallIn : 0) + dropIn;
    return question == HEADROOM && lostIn != 0
        ? fixed.map(full -> Answer.number(HEADROOM, TopLine.underStepsIn(full.number(), lostIn)))
        : fixed;
  }
}
