package org.scantling.words;

import java.util.List;
import org.scantling.reasons.Question;

/**
 * What somebody asks about.
 *
 * @param name as they called it
 * @param questions the chief question first
 */
public record Topic(String name, List<Question> questions) {
  public Topic {
    questions = List.copyOf(questions);
    if (questions.isEmpty()) {
      throw new IllegalArgumentException("topic '" + name + "' needs a question");
    }
  }
}
