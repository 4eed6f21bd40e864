package org.scantling.intake;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The text of an input file.
 *
 * @param name the file as the user named it
 * @param firstLine the line of the file at which the text starts, 1 for a whole file
 * @param text what it says
 * @param folder from where a relative {@code base:} is looked up
 */
public record SourceText(String name, int firstLine, String text, Path folder) {
  /** JSON by its name, or by its first letter where the name does not say. */
  boolean isJson() {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".yaml") || lower.endsWith(".yml")) {
      return false;
    }
    return lower.endsWith(".json") || text.stripLeading().startsWith("{");
  }

  /**
   * The text that a stream holds.
   *
   * @throws IntakeException when it cannot be read, is not UTF-8 or longer than a file may be
   */
  public static SourceText read(String name, InputStream in, Path folder) {
    return SourceFile.read(in, name, folder, new Problems());
  }

  /**
   * The folder that a file stands in.
   *
   * @throws IllegalArgumentException for the root, which is no file
   */
  public static Path folderOf(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null) {
      throw new IllegalArgumentException(file + " is no file");
    }
    return folder;
  }

  /** A text in memory, as if it stood in that file. */
  public static SourceText of(Path file, String name, String text) {
    return new SourceText(name, 1, text, folderOf(file));
  }

  Origin start() {
    return Origin.line(name, firstLine);
  }
}
