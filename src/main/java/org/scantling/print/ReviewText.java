package org.scantling.print;

import org.scantling.reasons.Review;
import org.scantling.words.Words;

/** The check of a fixed design as text for the builder: the answer in the first line. */
public final class ReviewText {
  private ReviewText() {}

  /** The text, no line wider than the options say. */
  public static String of(Review review, Words words, PrintOptions options) {
    return TextPage.print(ReviewPage.of(review, words, options.units()), options);
  }
}
