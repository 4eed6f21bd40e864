package org.scantling.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.scantling.tables.FileTrouble;
import org.scantling.tables.Utf8;

/** Fetches a file as text: small, readable, UTF-8, or refused in words. */
final class SourceFile {
  private static final int LARGEST_BYTES = 1 << 20;

  private SourceFile() {}

  /** What stands for the field where none is meant. */
  static String whole() {
    return ProblemPhrases.say("whole-file");
  }

  static SourceText read(Path file, String name, Problems problems) {
    Origin origin = Origin.whole(name);
    if (!Files.isRegularFile(file)) {
      String found = ProblemPhrases.say(Files.exists(file) ? "found.folder" : "found.nowhere");
      throw problems.fatal(
          origin
              .problem(whole(), found, ProblemPhrases.say("accepted.file"))
              .withAdvice(Neighbours.advice(file, name)));
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, name, SourceText.folderOf(file), problems);
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
            origin.problem(
                whole(), ProblemPhrases.say("found.large"), ProblemPhrases.say("accepted.size")));
      }
      return new SourceText(name, 1, text(bytes, origin, problems), folder);
    } catch (IOException unreadable) {
      throw unreadable(unreadable, origin, problems);
    }
  }

  private static IntakeException unreadable(
      IOException unreadable, Origin origin, Problems problems) {
    String found = ProblemPhrases.say("found.unreadable", "why", FileTrouble.words(unreadable));
    return problems.fatal(origin.problem(whole(), found, ProblemPhrases.say("accepted.file")));
  }

  private static String text(byte[] bytes, Origin origin, Problems problems) {
    try {
      return Utf8.text(bytes);
    } catch (Utf8.NotUtf8 place) {
      throw problems.fatal(
          origin
              .at(place.line())
              .problem(
                  whole(),
                  "(" + place.getMessage() + ")",
                  ProblemPhrases.say("accepted.encoding")));
    }
  }
}
