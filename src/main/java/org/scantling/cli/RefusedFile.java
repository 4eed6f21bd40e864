package org.scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.scantling.intake.IntakeException;
import org.scantling.intake.Outside;
import org.scantling.intake.OutsideException;
import org.scantling.intake.Problem;

/** What is wrong with a file that is not written yet, so that its lines say nothing to anybody. */
final class RefusedFile {
  private RefusedFile() {}

  static String words(IntakeException refused, Path file) {
    return words(refused.problems(), file);
  }

  /** The same of what lies outside the rules. */
  static String words(OutsideException outside, Path file) {
    String beyond =
        outside.found().stream().map(Outside::sentence).collect(Collectors.joining(" "));
    return (beyond + " " + words(outside.problems(), file)).strip();
  }

  private static String words(List<Problem> problems, Path file) {
    return problems.stream()
        .map(each -> each.file().equals(file.toString()) ? each.placeless() : each.text())
        .collect(Collectors.joining(" "));
  }
}
