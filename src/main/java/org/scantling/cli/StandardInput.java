package org.scantling.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.SourceText;

/** The site file that comes in by standard input, named by a hyphen; it is read once. */
final class StandardInput {
  private static final String HYPHEN = "-";

  private @Nullable SourceText text;

  static boolean isMeant(Path site) {
    return site.toString().equals(HYPHEN);
  }

  /** What came in; its base is looked up from the working folder on. */
  SourceText text() {
    SourceText read = text;
    if (read == null) {
      read =
          SourceText.read(
              CommandWords.say("standard-input"), System.in, Path.of("").toAbsolutePath());
      text = read;
    }
    return read;
  }
}
