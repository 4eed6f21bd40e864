package org.scantling.reasons;

/**
 * How the base design answers a question: a number, or an option with number 0; the size of its
 * posts with how broad they are, in inches.
 */
public record Proven(Question question, double number, String option) implements Fact {
  public static Proven number(Question question, double number) {
    return new Proven(question, number, "");
  }

  public static Proven option(Question question, String option) {
    return new Proven(question, 0, option);
  }

  public static Proven posts(String size, double breadthIn) {
    return new Proven(Question.POST_SIZE, breadthIn, size);
  }

  /** The occasion on which a caution is called for where the base does not say this. */
  public String unproven() {
    return "unproven=" + question.id();
  }

  @Override
  public String reference() {
    return "base:" + question.id();
  }
}
