package org.scantling.batch;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * What an earlier run has answered.
 *
 * @param file that holds the answers
 * @param last the last line that is answered; 0 where none is
 * @param lastAnswer its answer, in UTF-8
 * @param lines how many are answered
 * @param wrong how many of them are no sites
 */
public record Answered(Path file, int last, byte[] lastAnswer, long lines, long wrong) {
  /** Nothing yet. */
  public static Answered none(Path file) {
    return new Answered(file, 0, new byte[0], 0, 0);
  }

  /** Answers of other sites, other options or other rules are not mixed with these. */
  void compare(LineAnswer today) {
    if (!today.json().equals(new String(lastAnswer, StandardCharsets.UTF_8))) {
      throw otherwise();
    }
  }

  BatchException otherwise() {
    return BatchException.of("otherwise", "file", file.toString(), "line", String.valueOf(last));
  }
}
