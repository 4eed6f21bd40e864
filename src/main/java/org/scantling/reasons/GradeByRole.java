package org.scantling.reasons;

/**
 * A role that needs a grade of its own, because the standard has no strength for its size in that
 * of the rest.
 *
 * @param question the role's grade
 * @param size its size as it was decided
 */
public record GradeByRole(Question question, String size) implements Fact {
  @Override
  public String reference() {
    return TimberRole.of(question).orElseThrow().size().id();
  }
}
