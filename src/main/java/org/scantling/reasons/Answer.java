package org.scantling.reasons;

/** How a question is answered so far: a number, or an option with number 0. */
public record Answer(Question question, double number, String option) implements Fact {
  public static Answer number(Question question, double number) {
    return new Answer(question, number, "");
  }

  public static Answer option(Question question, String option) {
    return new Answer(question, 0, option);
  }

  /** The occasion on which this answer calls for a caution, as {@code cautions.csv} has it. */
  public String occasion() {
    return question.id() + "=" + option;
  }

  /** The option of a question that is answered by a count. */
  public int count() {
    return Integer.parseInt(option);
  }

  @Override
  public String reference() {
    return question.id();
  }
}
