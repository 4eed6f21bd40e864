package org.scantling.reasons;

/**
 * The species or the grade of one role, where it is another than that of the rest.
 *
 * @param question the role's species or its grade
 * @param asked true where the site file asks for it, false where the base design has it so and the
 *     site file says nothing of timber
 */
public record RoleTimber(Question question, String word, boolean asked) implements Fact {
  @Override
  public String reference() {
    return question.id();
  }
}
