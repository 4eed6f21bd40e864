package org.scantling.reasons;

/**
 * An option that a later question could not live with.
 *
 * @param question the question the option answers
 * @param option the option that was tried
 * @param broken the later question, by id
 * @param check what stopped even its best option
 * @param ratio how far it was over
 */
public record DeadEnd(Question question, String option, String broken, String check, double ratio)
    implements Fact {
  /** The option of a question that is answered by a count. */
  public int count() {
    return Integer.parseInt(option);
  }

  @Override
  public String reference() {
    return question.id() + "=" + option;
  }

  /** What broke the same, told of another question's option. */
  public DeadEnd of(Question other, String otherOption) {
    return new DeadEnd(other, otherOption, broken, check, ratio);
  }
}
