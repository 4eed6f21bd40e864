package org.scantling.words;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;

/** Finds the questions behind a word, in the singular or the plural. */
final class TopicFinder {
  private final List<SubjectRow> rows;

  TopicFinder(List<SubjectRow> rows) {
    this.rows = rows;
  }

  Topic find(String asked) {
    String plain = asked.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    int dot = plain.indexOf('.');
    String subject = singular(dot < 0 ? plain : plain.substring(0, dot));
    List<Question> questions =
        dot < 0 ? named(subject) : exact(subject + plain.substring(dot), subject);
    if (questions.isEmpty()) {
      throw unknown(asked, dot < 0 ? subject : subject + plain.substring(dot));
    }
    return new Topic(plain, questions);
  }

  /** A subject of questions counts before a word that several of them share. */
  private List<Question> named(String word) {
    List<Question> own = where(row -> row.question().subject().equals(word));
    List<Question> shared =
        where(
            row -> row.names().contains(word) || singular(row.question().attribute()).equals(word));
    List<Question> all = Stream.concat(own.stream(), shared.stream()).distinct().toList();
    return own.isEmpty() ? shared : all;
  }

  private List<Question> exact(String id, String subject) {
    List<Question> found = where(row -> row.question().id().equals(id));
    String attribute = id.substring(subject.length() + 1);
    return found.isEmpty()
        ? where(
            row ->
                row.names().contains(subject)
                    && singular(row.question().attribute()).equals(singular(attribute)))
        : found;
  }

  private List<Question> where(Predicate<SubjectRow> wanted) {
    return rows.stream().filter(wanted).map(SubjectRow::question).toList();
  }

  /** Row names are singular, so that one rule serves both. */
  private static String singular(String word) {
    if (word.length() < 4 || word.endsWith("ss")) {
      return word;
    }
    return word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
  }

  private UnknownSubject unknown(String asked, String plain) {
    SortedSet<String> words = new TreeSet<>();
    SortedSet<String> subjects = new TreeSet<>();
    for (SubjectRow row : rows) {
      subjects.add(row.question().subject());
      words.add(row.question().subject());
      words.addAll(row.names());
      words.add(row.question().id());
    }
    Map<String, String> blanks = new HashMap<>();
    blanks.put("asked", asked);
    blanks.put("subjects", String.join(", ", subjects));
    NearestWord.to(plain, words).ifPresent(word -> blanks.put("nearest", word));
    return new UnknownSubject(Sayings.of("topics").say("unknown", blanks));
  }
}
