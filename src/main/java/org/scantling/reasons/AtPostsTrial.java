package org.scantling.reasons;

/**
 * What the whole structure comes to with one way of laying crossbeams at the posts, tried where the
 * braces make single ones grow.
 *
 * @param option single or doubled
 * @param crossbeams the size that all of them need
 * @param breadthIn dressed thickness of that size
 * @param timberIn3 all timber, cubic inches
 */
public record AtPostsTrial(String option, String crossbeams, double breadthIn, double timberIn3)
    implements Fact {
  @Override
  public String reference() {
    return Question.CROSSBEAMS_AT_POSTS.id() + "=" + option;
  }
}
