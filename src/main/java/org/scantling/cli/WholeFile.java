package org.scantling.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.scantling.tables.FileTrouble;

/** Writes a file whole or not at all: under another name beside it, which then takes its place. */
final class WholeFile {
  private WholeFile() {}

  static void write(Path file, String text) {
    Path whole = file.toAbsolutePath().normalize();
    Path fresh = whole.resolveSibling("." + whole.getFileName() + ".new");
    try {
      Files.createDirectories(whole.getParent());
      Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
      Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException cannot) {
      remove(fresh);
      throw refused("file.unwritten", file, cannot);
    }
  }

  private static OutException refused(String saying, Path file, IOException cannot) {
    return new OutException(
        CommandWords.say(saying, "file", file.toString(), "why", FileTrouble.words(cannot)));
  }

  static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException cannot) {
      throw refused("file.unremoved", file, cannot);
    }
  }
}
