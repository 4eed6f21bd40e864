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

  private Answers(Map<Question, Answer> byQuestion, Consumer<Question> watcher) {
    this.byQuestion = byQuestion;
    this.watcher = watcher;
  }

  static Answers of(Map<Question, Answer> answers) {
    return new Answers(unchanging(answers), NOBODY);
  }

  private static Map<Question, Answer> unchanging(Map<Question, Answer> answers) {
    return answers.isEmpty()
        ? Collections.emptyMap()
        : Collections.unmodifiableMap(new EnumMap<>(answers));
  }

  /** The same answers, which tell of every question that is looked up in them. */
  Answers watched(Consumer<Question> watcher) {
    return new Answers(byQuestion, watcher);
  }

  /** The answer that is given here is nobody's to be told of when it is looked up. */
  Answers with(Answer answer) {
    Map<Question, Answer> more = new EnumMap<>(Question.class);
    more.putAll(byQuestion);
    more.put(answer.question(), answer);
    return new Answers(
        unchanging(more), watcher == NOBODY ? NOBODY : allBut(answer.question(), watcher));
  }

  private static Consumer<Question> allBut(Question given, Consumer<Question> watcher) {
    return question -> {
      if (question != given) {
        watcher.accept(question);
      }
    };
  }

  Optional<Answer> find(Question question) {
    return Optional.ofNullable(look(question));
  }

  boolean has(Question question) {
    return look(question) != null;
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

  /** All of them, which tells no watcher. */
  Iterable<Answer> all() {
    return byQuestion.values();
  }

  private Answer look(Question question) {
    watcher.accept(question);
    return byQuestion.get(question);
  }

  private Answer get(Question question) {
    Answer answer = look(question);
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
