package org.scantling.tables;

import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file or folder could not be used, in words for people. */
public final class FileTrouble {
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
    return trouble instanceof FileSystemException known && known.getReason() != null
        ? known.getReason()
        : "the system gives no reason";
  }
}
