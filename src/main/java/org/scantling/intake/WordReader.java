package org.scantling.intake;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.scantling.tables.OtherGrades;
import org.scantling.tables.SynonymRow;
import org.scantling.tables.WordForm;
import org.scantling.tables.WrittenSize;

/**
 * Reads one word of a list as people write it: as it stands, in other letters, or as another word
 * for the same.
 */
final class WordReader {
  private static final int MOST_OFFERED = 3;

  private final TradeWords trade;
  private final Problems problems;
  private final Readings readings;

  WordReader(TradeWords trade, Problems problems, Readings readings) {
    this.trade = trade;
    this.problems = problems;
    this.readings = readings;
  }

  /**
   * Reads a word, or says what is wrong with it.
   *
   * @param list what the words are about
   * @param words those that are accepted
   * @param accepted what is accepted, as it follows "must be"
   */
  void read(
      String list,
      Collection<String> words,
      Node.Scalar value,
      String path,
      Supplier<String> accepted) {
    Optional<SynonymRow> row = trade.synonyms().word(list, value.text());
    Optional<String> meant =
        meant(words, value)
            .or(() -> row.flatMap(each -> each.means().stream().findFirst()))
            .filter(words::contains);
    if (meant.isPresent()) {
      readings.putWord(path, meant.get());
      row.filter(each -> each.says().isPresent() && !words.contains(value.text()))
          .ifPresent(each -> readings.putReadAs(path, value.text().strip()));
      return;
    }
    Origin origin = value.origin();
    trade
        .edges()
        .ofWord(path, value.text())
        .ifPresentOrElse(
            edge -> problems.add(origin.outside(path, value.words(), edge)),
            () ->
                problems.add(
                    origin
                        .problem(path, value.words(), accepted.get())
                        .withAdvice(
                            row.flatMap(SynonymRow::says)
                                .orElseGet(() -> advice(list, value.text(), words)))));
  }

  /** The accepted word that is written in other letters, if it is one alone. */
  private static Optional<String> meant(Collection<String> words, Node.Scalar value) {
    String text = value.text();
    if (value.form() != Node.Form.TEXT) {
      return Optional.empty();
    }
    if (words.contains(text)) {
      return Optional.of(text);
    }
    String size = WrittenSize.plain(text);
    if (words.contains(size)) {
      return Optional.of(size);
    }
    List<String> same = words.stream().filter(word -> WordForm.same(word, text)).toList();
    return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
  }

  private static String advice(String list, String text, Collection<String> words) {
    Optional<String> other =
        list.equals(TableWords.GRADES.list()) ? OtherGrades.why(text) : Optional.empty();
    return other.orElseGet(() -> near(text, words));
  }

  private static String near(String text, Collection<String> words) {
    String near = NearMiss.advice(text, words);
    return near.isEmpty() ? inside(WrittenSize.plain(text), text, words) : near;
  }

  /** The words that stand in a longer text, such as {@code 2x8} in {@code (2) 2x8}. */
  private static String inside(String size, String text, Collection<String> words) {
    String spaced = " " + spaced(text) + " ";
    List<String> found =
        words.stream()
            .filter(word -> spaced.contains(" " + spaced(word) + " ") || holds(size, word))
            .toList();
    return found.isEmpty() || found.size() > MOST_OFFERED ? "" : ProblemPhrases.maybe(found);
  }

  private static String spaced(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", " ").strip();
  }

  /** A size is no part of a longer number. */
  private static boolean holds(String size, String word) {
    return Pattern.compile("(?<![\\dx])" + Pattern.quote(word) + "(?![\\dx])").matcher(size).find();
  }
}
