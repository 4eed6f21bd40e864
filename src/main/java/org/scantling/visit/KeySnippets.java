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
      case RecordItems.DATE, RecordItems.KIND, RecordItems.WHAT, RecordItems.PHOTO ->
          RecordItems.KEY;
      default -> row.path();
    };
  }

  /** What is written behind each key, of what was told. */
  Map<String, String> of(List<VisitRow> asked, VisitAnswers answers) {
    Map<String, String> all = new LinkedHashMap<>();
    for (VisitRow row : asked) {
      Optional<String> given = given(row, answers);
      if (row.hasPath() && given.isPresent() && !partOfList(row)) {
        snippet(row, given.get(), asked, answers).ifPresent(text -> all.put(key(row), text));
      }
    }
    list(record(asked, answers)).ifPresent(items -> all.put(RecordItems.KEY, items));
    return all;
  }

  /** What a structure is told to have been through, an item a thing. */
  List<String> record(List<VisitRow> asked, VisitAnswers answers) {
    return RecordItems.of(keys, id -> given(id, asked, answers));
  }

  private static boolean partOfList(VisitRow row) {
    return row.path().equals(MACHINE_WIDTH) || row.path().startsWith(RecordItems.KEY);
  }

  private static Optional<String> given(VisitRow row, VisitAnswers answers) {
    return answers.of(row.id()).filter(VisitAnswers.Given::isWritten).map(VisitAnswers.Given::text);
  }

  private static Optional<String> given(String id, List<VisitRow> asked, VisitAnswers answers) {
    return asked.stream()
        .filter(row -> row.id().equals(id))
        .findFirst()
        .flatMap(row -> answers.of(row.id()))
        .map(VisitAnswers.Given::text)
        .filter(text -> !text.equals(VisitRow.LEFT_OUT));
  }

  private Optional<String> snippet(
      VisitRow row, String answer, List<VisitRow> asked, VisitAnswers answers) {
    return switch (row.path()) {
      case USERS -> users(answer, asked, answers);
      case VINE -> list(words(answer).map(word -> "{ vine: " + word + " }").toList());
      default -> single(row, answer);
    };
  }

  /** Timber is written by its size alone; the name of a group only where the group is left out. */
  private Optional<String> single(VisitRow row, String answer) {
    Optional<String> value =
        row.asks() == AskedAs.PIECES ? TimberPieces.ofKept(answer).size() : Optional.of(answer);
    return value
        .filter(text -> !keys.isGroup(row.path()) || keys.words(row.path()).contains(text))
        .map(text -> keys.written(row.path(), text));
  }

  private Optional<String> users(String answer, List<VisitRow> asked, VisitAnswers answers) {
    List<String> items =
        new ArrayList<>(words(answer).filter(word -> !word.equals(MACHINE)).toList());
    asked.stream()
        .filter(row -> row.path().equals(MACHINE_WIDTH))
        .flatMap(row -> given(row, answers).stream())
        .map(width -> "{ machine-width: " + keys.written(MACHINE_WIDTH, width) + " }")
        .forEach(items::add);
    return list(items);
  }

  private static Optional<String> list(List<String> items) {
    return items.isEmpty() ? Optional.empty() : Optional.of("[ " + String.join(", ", items) + " ]");
  }

  private static Stream<String> words(String answer) {
    return Arrays.stream(answer.split(", "));
  }
}
