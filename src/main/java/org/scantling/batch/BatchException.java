package org.scantling.batch;

import java.io.IOException;
import java.nio.file.Path;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FileTrouble;

/** A file of sites or of answers that cannot be used; nothing was written to it. */
public final class BatchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private BatchException(String message) {
    super(message);
  }

  /** A refusal in the words of {@code rules/words/batch.csv}, its blanks filled. */
  static BatchException of(String saying, String... blanks) {
    return new BatchException(Sayings.of("batch").say(saying, blanks));
  }

  static BatchException trouble(String saying, Path file, IOException why) {
    return of(saying, "file", file.toString(), "why", FileTrouble.words(why));
  }
}
