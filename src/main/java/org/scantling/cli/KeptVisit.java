package org.scantling.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.scantling.tables.FileTrouble;
import org.scantling.tables.Utf8;
import org.scantling.visit.AnswersText;
import org.scantling.visit.VisitAnswers;

/** The answers of a visit that is not over, in a file beside the one that will come of it. */
final class KeptVisit {
  private static final String ENDING = ".visit";

  private final Path file;
  private final String comment;

  /**
   * @param target the file that will come of the visit
   * @param comment what the kept file says of itself
   */
  KeptVisit(Path target, String comment) {
    this.file = target.resolveSibling(target.getFileName() + ENDING);
    this.comment = comment;
  }

  Path file() {
    return file;
  }

  boolean exists() {
    return Files.isRegularFile(file);
  }

  VisitAnswers read() {
    if (!exists()) {
      return VisitAnswers.none();
    }
    try {
      return AnswersText.read(Utf8.text(Files.readAllBytes(file)));
    } catch (IOException unreadable) {
      throw unreadable(FileTrouble.words(unreadable));
    } catch (Utf8.NotUtf8 unreadable) {
      throw unreadable(unreadable.getMessage());
    }
  }

  private OutException unreadable(String why) {
    return new OutException(
        CommandWords.say("kept.unreadable", "file", file.toString(), "why", why));
  }

  /** Nothing answered, nothing kept. */
  void keep(VisitAnswers answers) {
    if (answers.given().isEmpty() && answers.earlier().isEmpty()) {
      WholeFile.remove(file);
    } else {
      WholeFile.write(file, AnswersText.of(answers, comment));
    }
  }

  void remove() {
    WholeFile.remove(file);
  }
}
