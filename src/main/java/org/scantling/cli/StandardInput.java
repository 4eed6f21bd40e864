package org.scantling.cli;

import java.nio.file.Path;
import org.scantling.intake.SourceText;

/** The site file that comes in by standard input, named by a hyphen; it is read once. */
final class StandardInput {
  private static final String HYPHEN = "-";

  private SourceText text;

  static boolean isMeant(Path site) {
    return site.toString().equals(HYPHEN);
  }

  /** What came in; its base is looked up from the working folder on. */
  SourceText text() {
    if (text == null) {
      text =
          SourceText.read(
              CommandWords.say("standard-input"), System.in, Path.of("").toAbsolutePath());
    }
    return text;
  }
}
