package org.scantling.cli;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.scantling.intake.IntakeException;
import org.scantling.intake.Problem;

/** What is wrong with a file that is not written yet, so that its lines say nothing to anybody. */
final class RefusedFile {
  private RefusedFile() {}

  static String words(IntakeException refused, Path file) {
    return refused.problems().stream()
        .map(each -> each.file().equals(file.toString()) ? bare(each) : each.text())
        .collect(Collectors.joining(" "));
  }

  private static String bare(Problem problem) {
    String advice = problem.advice().isEmpty() ? "" : " " + problem.advice();
    return problem.field() + ": " + problem.found() + " must be " + problem.accepted() + "."
        + advice;
  }
}
