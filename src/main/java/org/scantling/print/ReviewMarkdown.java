package org.scantling.print;

import org.scantling.reasons.Review;
import org.scantling.words.Words;

/** The same as {@link ReviewText}, in Markdown. */
public final class ReviewMarkdown {
  private ReviewMarkdown() {}

  public static String of(Review review, Words words, PrintOptions options) {
    return MarkdownPage.print(ReviewPage.of(review, words, options.units()));
  }
}
