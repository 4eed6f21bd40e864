package org.scantling.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.sayings.Sayings;

/** The text of a file, each key with what it is and where its value came from. */
public final class VisitText {
  private static final String ZONE = "hardiness-zone";

  private final Visit visit;
  private final VisitAnswers answers;
  private final Sayings sayings;
  private final Map<String, String> notes = new LinkedHashMap<>();

  private VisitText(Visit visit, VisitAnswers answers) {
    this.visit = visit;
    this.answers = answers;
    this.sayings = visit.sayings();
    for (VisitRow row : visit.asked(answers)) {
      if (row.hasPath() && !row.note().isEmpty()) {
        notes.put(KeySnippets.key(row), row.note());
      }
    }
  }

  /** A site file. */
  public static String of(Visit visit, VisitAnswers answers) {
    return new VisitText(visit, answers).text();
  }

  private String text() {
    CommentedYaml yaml = new CommentedYaml();
    head().forEach(yaml::comment);
    Map<String, String> written = visit.written(answers);
    inOrder(written)
        .forEach(
            (key, value) -> {
              if (key.equals(RecordItems.KEY)) {
                yaml.putItems(key, visit.record(answers));
              } else {
                yaml.put(key, value, beside(key));
              }
            });
    leftOut(yaml);
    return yaml.text();
  }

  /** The order of the readers of the file, which is the one in which people read of the keys. */
  private Map<String, String> inOrder(Map<String, String> written) {
    Map<String, String> order = new LinkedHashMap<>();
    for (String path : visit.keys().paths()) {
      written.forEach(
          (key, value) -> {
            if (path.equals(key) || path.startsWith(key + ".")) {
              order.putIfAbsent(key, value);
            }
          });
    }
    return order;
  }

  private List<String> head() {
    List<String> head = new ArrayList<>();
    String date = said("date").or(() -> said("base-date")).orElse("");
    head.add(
        said("place")
            .filter(place -> !place.equals(VisitRow.LEFT_OUT))
            .map(place -> sayings.say("head-place", "place", place, "date", date))
            .orElseGet(() -> sayings.say("head", "date", date)));
    head.add(sayings.say("head-more"));
    return head;
  }

  private Optional<String> said(String question) {
    return answers.of(question).map(VisitAnswers.Given::text);
  }

  private String beside(String key) {
    String note = notes.getOrDefault(key, "");
    String from = sayings.say(key.endsWith(ZONE) ? "from-zone" : from(key));
    return note.isEmpty() ? from : note + "; " + from;
  }

  private String from(String key) {
    List<VisitRow> rows =
        visit.asked(answers).stream()
            .filter(row -> row.hasPath() && KeySnippets.key(row).equals(key))
            .filter(row -> answers.of(row.id()).filter(VisitAnswers.Given::isWritten).isPresent())
            .toList();
    if (rows.stream().anyMatch(row -> answers.of(row.id()).orElseThrow().told())) {
      return "from-told";
    }
    return rows.stream().anyMatch(VisitRow::usualIsWritten) ? "from-usual" : "from-worked";
  }

  private void leftOut(CommentedYaml yaml) {
    List<VisitRow> open =
        visit.asked(answers).stream()
            .filter(VisitRow::hasPath)
            .filter(row -> answers.of(row.id()).filter(each -> !each.isWritten()).isPresent())
            .toList();
    if (!open.isEmpty()) {
      yaml.blank();
      yaml.comment(sayings.say("left-out"));
      open.forEach(row -> yaml.comment("  " + row.path() + ": " + row.usualSaid()));
    }
  }
}
