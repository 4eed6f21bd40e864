package org.scantling.reasons;

/** How a question is answered so far: a number, or an option with number 0. */
public record Answer(Question question, double number, String option) implements Fact {
  public static Answer number(Question question, double number) {
    return new Answer(question, number, "");
  }

  public static Answer option(Question question, String option) {
    return new Answer(question, 0, option);
  }

  @Override
  public String reference() {
    return question.id();
  }
}
