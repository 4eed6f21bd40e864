package org.scantling.engine;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Question;

/** What is answered so far; every change is a new value. */
final class Answers {
  private static final Consumer<Question> NOBODY = question -> {};

  private final Map<Question, Answer> byQuestion;
  private final Consumer<Question> watcher;

  private Answers(Map<Question, Answer> answers, Consumer<Question> watcher) {
    this.byQuestion =
        answers.isEmpty()
            ? Collections.emptyMap()
            : Collections.unmodifiableMap(new EnumMap<>(answers));
    this.watcher = watcher;
  }

  static Answers of(Map<Question, Answer> answers) {
    return new Answers(answers, NOBODY);
  }

  /** The same answers; whoever reads one of them is noted. */
  Answers watched(Consumer<Question> watcher) {
    return new Answers(byQuestion, watcher);
  }

  Answers with(Answer answer) {
    Map<Question, Answer> more = new EnumMap<>(Question.class);
    more.putAll(byQuestion);
    more.put(answer.question(), answer);
    return new Answers(more, watcher);
  }

  Optional<Answer> find(Question question) {
    watcher.accept(question);
    return Optional.ofNullable(byQuestion.get(question));
  }

  boolean has(Question question) {
    watcher.accept(question);
    return byQuestion.containsKey(question);
  }

  /**
   * @throws IllegalStateException when the question is not answered yet
   */
  double number(Question question) {
    return get(question).number();
  }

  /**
   * @throws IllegalStateException when the question is not answered yet
   */
  String option(Question question) {
    return get(question).option();
  }

  Iterable<Answer> all() {
    return byQuestion.values();
  }

  private Answer get(Question question) {
    watcher.accept(question);
    Answer answer = byQuestion.get(question);
    if (answer == null) {
      throw new IllegalStateException(question.id() + " is not answered yet");
    }
    return answer;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Answers that && byQuestion.equals(that.byQuestion);
  }

  @Override
  public int hashCode() {
    return byQuestion.hashCode();
  }

  @Override
  public String toString() {
    return byQuestion.values().toString();
  }
}
