package org.scantling.words;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/**
 * The choices of which it can be asked how far they hold, each as the subject of a sentence:
 * rules/choices.csv. Not among them are measures that follow every inch of a demand.
 */
public final class Choices {
  private final Map<Question, Row> rows = new EnumMap<>(Question.class);

  /**
   * @param noun with its article
   * @param client the same for the client
   * @param many true for a plural
   * @param chief true where it is told without being asked for; the others mostly turn with these
   * @param back true where it is told, when it has changed, what would bring the base's back
   */
  public record Row(
      Question question, String noun, String client, boolean many, boolean chief, boolean back) {
    public String noun(Reader reader) {
      return reader == Reader.CLIENT ? client : noun;
    }
  }

  private Choices() {}

  static Choices read() {
    Choices choices = new Choices();
    for (WordRow row : WordFile.read("choices.csv")) {
      Question question = Question.of(row.cell("question"));
      choices.rows.put(
          question,
          new Row(
              question,
              row.cell("noun"),
              row.cell("client"),
              row.isYes("many"),
              row.isYes("chief"),
              row.isYes("back")));
    }
    return choices;
  }

  public Set<Question> questions() {
    return Collections.unmodifiableSet(rows.keySet());
  }

  /**
   * Those that a topic is about.
   *
   * @throws UnknownSubject when none of it is a choice of this kind
   */
  public Set<Question> about(Topic topic) {
    Set<Question> asked = EnumSet.noneOf(Question.class);
    topic.questions().stream().filter(rows::containsKey).forEach(asked::add);
    if (asked.isEmpty()) {
      throw new UnknownSubject(Sayings.of("topics").say("no-turn", "topic", topic.name()));
    }
    return asked;
  }

  public Optional<Row> find(Question question) {
    return Optional.ofNullable(rows.get(question));
  }
}
