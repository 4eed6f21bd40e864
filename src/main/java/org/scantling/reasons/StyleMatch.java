package org.scantling.reasons;

/**
 * The header that takes the proven one's place in the other style: the smallest that is no
 * shallower.
 *
 * @param style the style it belongs to
 * @param proven the base's header, of the other style
 * @param option the size to start from
 */
public record StyleMatch(String style, String proven, String option) implements Fact {
  @Override
  public String reference() {
    return "base:" + Question.HEADER_SIZE.id();
  }
}
