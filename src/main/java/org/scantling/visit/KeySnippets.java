package org.scantling.visit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.intake.KeyReader;

/** The answers as they stand behind the keys of the file. */
final class KeySnippets {
  static final String USERS = "walkway.users";
  static final String MACHINE_WIDTH = "walkway.users.machine-width";
  static final String VINE = "planting.vine";
  private static final String PLANTING = "planting";
  private static final String MACHINE = "machine";

  private final KeyReader keys;

  KeySnippets(KeyReader keys) {
    this.keys = keys;
  }

  /** The key that a row's answer stands behind: that of the list, where it is part of one. */
  static String key(VisitRow row) {
    return switch (row.path()) {
      case MACHINE_WIDTH -> USERS;
      case VINE -> PLANTING;
      default -> row.path();
    };
  }

  /** What is written behind each key, of what was told. */
  Map<String, String> of(List<VisitRow> asked, VisitAnswers answers) {
    Map<String, String> all = new LinkedHashMap<>();
    for (VisitRow row : asked) {
      Optional<String> told = told(row, answers);
      if (row.hasPath() && told.isPresent() && !row.path().equals(MACHINE_WIDTH)) {
        snippet(row, told.get(), asked, answers).ifPresent(text -> all.put(key(row), text));
      }
    }
    return all;
  }

  private static Optional<String> told(VisitRow row, VisitAnswers answers) {
    return answers.of(row.id()).filter(VisitAnswers.Given::told).map(VisitAnswers.Given::text);
  }

  private Optional<String> snippet(
      VisitRow row, String answer, List<VisitRow> asked, VisitAnswers answers) {
    return switch (row.path()) {
      case USERS -> users(answer, asked, answers);
      case VINE -> list(words(answer).map(word -> "{ vine: " + word + " }").toList());
      default -> Optional.of(keys.written(row.path(), answer));
    };
  }

  private Optional<String> users(String answer, List<VisitRow> asked, VisitAnswers answers) {
    List<String> items =
        new ArrayList<>(words(answer).filter(word -> !word.equals(MACHINE)).toList());
    asked.stream()
        .filter(row -> row.path().equals(MACHINE_WIDTH))
        .flatMap(row -> told(row, answers).stream())
        .map(width -> "{ machine-width: " + keys.written(MACHINE_WIDTH, width) + " }")
        .forEach(items::add);
    return list(items);
  }

  private static Optional<String> list(List<String> items) {
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of("[ " + String.join(", ", items) + " ]");
  }

  private static Stream<String> words(String answer) {
    return Arrays.stream(answer.split(", "));
  }
}
