package org.scantling.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.scantling.tables.FileTrouble;
import org.scantling.tables.Utf8;

/** Fetches a file as text: small, readable, UTF-8, or refused in words. */
final class SourceFile {
  static final String WHOLE = "whole file";
  private static final int LARGEST_BYTES = 1 << 20;

  private SourceFile() {}

  static SourceText read(Path file, String name, Problems problems) {
    Origin origin = Origin.whole(name);
    if (!Files.isRegularFile(file)) {
      String found = Files.exists(file) ? "(a folder or device)" : "(no such file)";
      throw problems.fatal(origin.problem(WHOLE, found, "a YAML or JSON file that can be read"));
    }
    byte[] bytes = bytes(file, origin, problems);
    if (bytes.length > LARGEST_BYTES) {
      throw problems.fatal(
          origin.problem(WHOLE, "(over 1 MiB)", "no larger than 1 MiB (1048576 bytes)"));
    }
    Path folder = file.toAbsolutePath().normalize().getParent();
    return new SourceText(name, 1, text(bytes, origin, problems), folder);
  }

  private static byte[] bytes(Path file, Origin origin, Problems problems) {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LARGEST_BYTES + 1);
    } catch (IOException unreadable) {
      String found = "(cannot be read: " + FileTrouble.words(unreadable) + ")";
      throw problems.fatal(origin.problem(WHOLE, found, "a YAML or JSON file that can be read"));
    }
  }

  private static String text(byte[] bytes, Origin origin, Problems problems) {
    try {
      return Utf8.text(bytes);
    } catch (Utf8.NotUtf8 place) {
      throw problems.fatal(
          origin
              .at(place.line())
              .problem(WHOLE, "(" + place.getMessage() + ")", "YAML or JSON text in UTF-8"));
    }
  }
}
