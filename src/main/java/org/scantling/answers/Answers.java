package org.scantling.answers;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Question;

/** What is answered so far; every change is a new value. */
public final class Answers {
  private static final Consumer<Question> NOBODY = question -> {};

  private final EnumMap<Question, Answer> byQuestion;
  private final Consumer<Question> watcher;

  private Answers(EnumMap<Question, Answer> byQuestion, Consumer<Question> watcher) {
    this.byQuestion = byQuestion;
    this.watcher = watcher;
  }

  public static Answers of(Map<Question, Answer> answers) {
    EnumMap<Question, Answer> own = new EnumMap<>(Question.class);
    own.putAll(answers);
    return new Answers(own, NOBODY);
  }

  /** The same answers, which tell of every question that is looked up in them. */
  public Answers watched(Consumer<Question> watcher) {
    return new Answers(byQuestion, watcher);
  }

  /** The answer that is given here is nobody's to be told of when it is looked up. */
  public Answers with(Answer answer) {
    EnumMap<Question, Answer> more = byQuestion.clone();
    more.put(answer.question(), answer);
    return new Answers(more, watcher == NOBODY ? NOBODY : allBut(answer.question(), watcher));
  }

  /** The same without the answer to one question, where there was any. */
  public Answers without(Question question) {
    EnumMap<Question, Answer> fewer = byQuestion.clone();
    fewer.remove(question);
    return new Answers(fewer, watcher);
  }

  private static Consumer<Question> allBut(Question given, Consumer<Question> watcher) {
    return question -> {
      if (question != given) {
        watcher.accept(question);
      }
    };
  }

  public Optional<Answer> find(Question question) {
    return Optional.ofNullable(look(question));
  }

  public boolean has(Question question) {
    return look(question) != null;
  }

  /**
   * @throws IllegalStateException when the question is not answered yet
   */
  public double number(Question question) {
    return get(question).number();
  }

  /**
   * @throws IllegalStateException when the question is not answered yet
   */
  public String option(Question question) {
    return get(question).option();
  }

  /** All of them, which tells no watcher. */
  public Iterable<Answer> all() {
    return Collections.unmodifiableCollection(byQuestion.values());
  }

  private @Nullable Answer look(Question question) {
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
