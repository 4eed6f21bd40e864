package org.scantling.tables;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file or folder could not be used, in words for people. */
public final class FileTrouble {
  private static final String NO_REASON = "the system gives no reason";

  private FileTrouble() {}

  public static String words(Exception trouble) {
    if (trouble instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (trouble instanceof CharacterCodingException) {
      return "not UTF-8 text";
    }
    if (trouble instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (trouble instanceof FileSystemException known) {
      return known.getReason() != null ? known.getReason() : NO_REASON;
    }
    // What the system says itself, such as that no space is left, comes without a class of its own.
    return trouble instanceof IOException && trouble.getMessage() != null
        ? trouble.getMessage()
        : NO_REASON;
  }
}
