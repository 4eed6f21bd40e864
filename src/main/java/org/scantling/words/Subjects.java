package org.scantling.words;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Question;
import org.scantling.sayings.WordFile;

/** What questions are called, in the order in which a report speaks of them. */
public final class Subjects {
  private final List<SubjectRow> rows;
  private final Map<Question, SubjectRow> byQuestion = new EnumMap<>(Question.class);

  private Subjects(List<SubjectRow> rows) {
    this.rows = rows;
    rows.forEach(row -> byQuestion.put(row.question(), row));
  }

  static Subjects read() {
    return new Subjects(
        WordFile.read("words/subjects.csv").stream().map(SubjectRow::read).toList());
  }

  public List<SubjectRow> rows() {
    return rows;
  }

  /**
   * @throws IllegalArgumentException when rules/words/subjects.csv has no such row
   */
  public SubjectRow row(Question question) {
    SubjectRow row = byQuestion.get(question);
    if (row == null) {
      throw new IllegalArgumentException(
          "rules/words/subjects.csv has no row for " + question.id());
    }
    return row;
  }

  /** The question that a path of the site file answers, if one does. */
  public Optional<SubjectRow> at(String path) {
    return rows.stream().filter(row -> row.path().equals(path)).findFirst();
  }

  /**
   * What somebody asks about: {@code posts}, {@code post.size}, {@code snow}.
   *
   * @throws UnknownSubject when nothing is called so
   */
  public Topic find(String asked) {
    return new TopicFinder(rows).find(asked);
  }
}
