package org.scantling.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.sayings.Template;
import org.scantling.tables.SynonymRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WordForm;

/**
 * What is told of a word of a file that was read as another, or of a title that hints at something
 * outside the rules. The reading is named as {@code site.soil=loam}.
 */
final class ReadAs {
  private static final String TITLE = "title";
  private static final String WRITTEN = "written";

  private final Tables tables;
  private final Reader reader;

  ReadAs(Tables tables, Reader reader) {
    this.tables = tables;
    this.reader = reader;
  }

  /** The sentence, or empty where the text names no such reading. */
  Optional<String> say(String reading) {
    int equals = reading.indexOf('=');
    if (equals < 0) {
      return Optional.empty();
    }
    String key = reading.substring(0, equals).replaceAll(".*\\.|\\[\\d+]", "");
    String written = reading.substring(equals + 1);
    return key.equals(TITLE) ? ofTitle(written) : ofWord(key, written);
  }

  private Optional<String> ofWord(String list, String written) {
    return tables.synonyms().rows().stream()
        .filter(row -> row.list().equals(list) && names(row.written(), written))
        .findFirst()
        .flatMap(SynonymRow::says)
        .map(says -> filled(says, written));
  }

  private Optional<String> ofTitle(String written) {
    return tables.edges().rows().stream()
        .filter(row -> names(row.title(), written))
        .findFirst()
        .map(
            row ->
                Phrases.all()
                    .say(
                        "title.hint",
                        reader,
                        Map.of(WRITTEN, written, "because", row.because(), "whose", row.whose())));
  }

  private static boolean names(List<String> words, String written) {
    return words.stream().anyMatch(word -> WordForm.same(word, written));
  }

  /** Assumptions end their own sentences. */
  private static String filled(String says, String written) {
    return new Template(says.replaceAll("\\.$", ""))
        .filled(name -> name.equals(WRITTEN) ? Optional.of(written) : Optional.empty());
  }
}
