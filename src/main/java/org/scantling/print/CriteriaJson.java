package org.scantling.print;

import static org.scantling.reasons.Question.CLEAR_WIDTH;
import static org.scantling.reasons.Question.EXPOSURE;
import static org.scantling.reasons.Question.FLAT_SNOW;
import static org.scantling.reasons.Question.FROST_DEPTH;
import static org.scantling.reasons.Question.GROUND_SNOW;
import static org.scantling.reasons.Question.HEADROOM;
import static org.scantling.reasons.Question.LIVE_LOAD;
import static org.scantling.reasons.Question.SNOW_SHARE;
import static org.scantling.reasons.Question.SOIL;
import static org.scantling.reasons.Question.VINE;
import static org.scantling.reasons.Question.VINE_LOAD;
import static org.scantling.reasons.Question.WIND_PRESSURE;
import static org.scantling.reasons.Question.WIND_SPEED;

import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reasoned;
import tools.jackson.databind.node.ObjectNode;

/** What the structure is designed for, as far as it was decided. */
final class CriteriaJson {
  private final Reasoned answer;
  private final ObjectNode node = JsonText.object();

  private CriteriaJson(Reasoned answer) {
    this.answer = answer;
  }

  static ObjectNode of(Reasoned answer) {
    CriteriaJson criteria = new CriteriaJson(answer);
    criteria.number("frostDepthIn", FROST_DEPTH);
    criteria.number("groundSnowPsf", GROUND_SNOW);
    criteria.number("windSpeedMph", WIND_SPEED);
    criteria.word("exposure", EXPOSURE);
    criteria.word("soil", SOIL);
    criteria.word("vine", VINE);
    criteria.number("vinePsf", VINE_LOAD);
    criteria.number("livePsf", LIVE_LOAD);
    criteria.snow();
    criteria.number("windPressurePsf", WIND_PRESSURE);
    criteria.number("clearWidthIn", CLEAR_WIDTH);
    criteria.number("headroomIn", HEADROOM);
    return criteria.node;
  }

  /** What lies on the top: the flat snow times the share that an open top keeps. */
  private void snow() {
    amount(FLAT_SNOW)
        .flatMap(flat -> amount(SNOW_SHARE).map(share -> flat * share))
        .ifPresent(snow -> node.put("snowPsf", JsonText.rounded(snow)));
  }

  private void number(String key, Question question) {
    amount(question).ifPresent(amount -> node.put(key, JsonText.rounded(amount)));
  }

  private void word(String key, Question question) {
    proposed(question)
        .filter(Outcome.Word.class::isInstance)
        .ifPresent(word -> node.put(key, ((Outcome.Word) word).text()));
  }

  private Optional<Double> amount(Question question) {
    return proposed(question)
        .filter(Outcome.Amount.class::isInstance)
        .map(outcome -> ((Outcome.Amount) outcome).measure().amount());
  }

  private Optional<Outcome> proposed(Question question) {
    return answer.decision(question).map(Decision::proposed);
  }
}
