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
    Path folder = file.toAbsolutePath().normalize().getParent();
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, name, folder, problems);
    } catch (IOException unreadable) {
      throw unreadable(unreadable, origin, problems);
    }
  }

  /** The text of a stream, whole. */
  static SourceText read(InputStream in, String name, Path folder, Problems problems) {
    Origin origin = Origin.whole(name);
    try {
      byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
      if (bytes.length > LARGEST_BYTES) {
        throw problems.fatal(
            origin.problem(WHOLE, "(over 1 MiB)", "no larger than 1 MiB (1048576 bytes)"));
      }
      return new SourceText(name, 1, text(bytes, origin, problems), folder);
    } catch (IOException unreadable) {
      throw unreadable(unreadable, origin, problems);
    }
  }

  private static IntakeException unreadable(
      IOException unreadable, Origin origin, Problems problems) {
    String found = "(cannot be read: " + FileTrouble.words(unreadable) + ")";
    return problems.fatal(origin.problem(WHOLE, found, "a YAML or JSON file that can be read"));
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
