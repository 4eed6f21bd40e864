package org.scantling.tables;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file or folder could not be used, in words for people. */
public final class FileTrouble {
  private FileTrouble() {}

  public static String words(Exception trouble) {
    if (trouble instanceof AccessDeniedException) {
      return RefusalWords.say("trouble.permission");
    }
    if (trouble instanceof CharacterCodingException) {
      return RefusalWords.say("trouble.encoding");
    }
    if (trouble instanceof NoSuchFileException) {
      return RefusalWords.say("trouble.nowhere");
    }
    if (trouble instanceof FileSystemException known) {
      return known.getReason() != null ? known.getReason() : noReason();
    }
    // What the system says itself, such as that no space is left, comes without a class of its own.
    return trouble instanceof IOException && trouble.getMessage() != null
        ? trouble.getMessage()
        : noReason();
  }

  private static String noReason() {
    return RefusalWords.say("trouble.unknown");
  }
}
