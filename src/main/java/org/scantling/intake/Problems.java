package org.scantling.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects problems while reading goes on. */
final class Problems {
  private final List<Problem> found = new ArrayList<>();
  private final List<Outside> outside = new ArrayList<>();

  void add(Problem problem) {
    found.add(problem);
  }

  void add(Outside beyond) {
    outside.add(beyond);
  }

  /** Everything that others found. */
  void addAll(Problems others) {
    found.addAll(others.found);
    outside.addAll(others.outside);
  }

  void addAll(List<Problem> problems) {
    found.addAll(problems);
  }

  /** True once there are more than anyone reads; then advice is no longer worth its time. */
  boolean areMany() {
    return found.size() > IntakeException.MOST_SHOWN;
  }

  /** Ends the reading if anything was wrong. */
  void throwIfAny() {
    if (!outside.isEmpty()) {
      throw new OutsideException(outside, all());
    }
    if (!found.isEmpty()) {
      throw new IntakeException(all());
    }
  }

  /** Ends the reading at once, with what was found before. */
  IntakeException fatal(Problem problem) {
    add(problem);
    return new IntakeException(all());
  }

  /** True where nothing was found, of either kind. */
  boolean none() {
    return found.isEmpty() && outside.isEmpty();
  }

  /** What lies outside the rules. */
  List<Outside> beyond() {
    return List.copyOf(outside);
  }

  /** Everything found so far, in the order of the files and their lines. */
  List<Problem> all() {
    List<String> files = found.stream().map(Problem::file).distinct().toList();
    return found.stream()
        .sorted(
            Comparator.comparingInt((Problem problem) -> files.indexOf(problem.file()))
                .thenComparingInt(problem -> problem.line().orElse(0)))
        .toList();
  }
}
