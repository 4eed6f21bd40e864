package org.scantling.print;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scantling.reasons.Question;
import org.scantling.words.Choices;
import org.scantling.words.Words;

/** The choices that are told without being asked for, the fill of the holes and the timber. */
final class ChiefChoices {
  private ChiefChoices() {}

  static Set<Question> of(Words words) {
    Choices choices = words.choices();
    Set<Question> chief =
        new LinkedHashSet<>(List.of(Question.SPECIES, Question.GRADE, Question.FOOTING_BACKFILL));
    for (Question question : choices.questions()) {
      if (choices.find(question).orElseThrow().chief()) {
        chief.add(question);
      }
    }
    return chief;
  }
}
