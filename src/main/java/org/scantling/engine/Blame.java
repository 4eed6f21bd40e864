package org.scantling.engine;

import java.util.List;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;

/**
 * Which demand of the site breaks a question that found no answer: of those that bear on it, the
 * one that has grown most against the base.
 */
final class Blame {
  private final Job job;
  private final Answers answers;

  Blame(Job job, Answers answers) {
    this.job = job;
    this.answers = answers;
  }

  String demand(Question broken, Finding closest) {
    if (closest instanceof Finding.Reject reject && ungraded(broken, reject.option())) {
      return Demand.GRADE.path();
    }
    if (bracketsAsked() && broken.phase().compareTo(Phase.SUPPORT) >= 0) {
      return Demand.FOOTING.path();
    }
    return most(broken);
  }

  /** True where the size that comes closest would serve, but nobody has graded it so. */
  private boolean ungraded(Question broken, String option) {
    return broken.attribute().equals("size") && job.bench(answers).material(option).isEmpty();
  }

  private String most(Question broken) {
    return switch (broken.phase()) {
      case CROSSBEAMS -> most(Demand.CLEAR_WIDTH, Demand.GROUND_SNOW);
      case HEADERS -> most(Demand.GROUND_SNOW, Demand.CLEAR_WIDTH, Demand.WALK_LENGTH);
      case HEIGHT -> Demand.HEADROOM.path();
      case POSTS, SIDES, FOOTINGS, JOINTS ->
          most(Demand.WIND_SPEED, Demand.HEADROOM, Demand.GROUND_SNOW);
      default -> Demand.WALK_LENGTH.path();
    };
  }

  /** Brackets that the base does without: posts in the ground would have stood by themselves. */
  private boolean bracketsAsked() {
    return job.site().preferences().footing().equals("bracket")
        && !job.site().base().posts().footing().equals("bracket");
  }

  private String most(Demand... demands) {
    Demand worst = demands[0];
    double growth = 0;
    for (Demand demand : List.of(demands)) {
      double grown = growth(demand);
      if (grown > growth) {
        growth = grown;
        worst = demand;
      }
    }
    return worst.path();
  }

  private double growth(Demand demand) {
    Question question =
        switch (demand) {
          case CLEAR_WIDTH -> Question.CLEAR_WIDTH;
          case GROUND_SNOW -> Question.GROUND_SNOW;
          case WIND_SPEED -> Question.WIND_SPEED;
          case HEADROOM -> Question.HEADROOM;
          default -> Question.BAY;
        };
    double before = job.base().answers().find(question).map(each -> each.number()).orElse(0.0);
    double now = answers.find(question).map(each -> each.number()).orElse(0.0);
    return before > 0 ? now / before : 0;
  }
}
