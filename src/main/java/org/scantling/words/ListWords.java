package org.scantling.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Sight;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordRow;

/** The values of one closed list, from its rows and from the table that owns its words. */
final class ListWords {
  private static final String EVERY = "*";

  private final String kind;
  private final OptionWords options;
  private final ListOwner owner;

  /**
   * @param list the row of rules/words/closed-lists.csv
   * @param owner the table that the words come from; it may have none
   */
  ListWords(WordRow list, OptionWords options, ListOwner owner) {
    this.kind = list.cell("names");
    this.options = options;
    this.owner = owner;
  }

  /** A row for every word comes first where there is one; then what only the table has. */
  List<ListValue> values(List<WordRow> rows) {
    List<ListValue> values = new ArrayList<>();
    Optional<WordRow> every = row(rows, EVERY);
    for (WordRow row : rows) {
      String word = row.cell("value");
      if (!word.equals(EVERY) && owner.mayHave(word)) {
        values.add(value(word, row));
      }
    }
    for (String word : owner.words()) {
      if (row(rows, word).isEmpty()) {
        values.add(every.map(row -> value(word, row)).orElseGet(() -> added(word)));
      }
    }
    return values;
  }

  private static Optional<WordRow> row(List<WordRow> rows, String word) {
    return rows.stream().filter(row -> row.cell("value").equals(word)).findFirst();
  }

  private ListValue value(String word, WordRow row) {
    Map<String, String> blanks = owner.blanks(word);
    return new ListValue(
        word,
        row.cell("name").isEmpty() ? name(word) : filled(row.cell("name"), blanks),
        filled(row.cell("how"), blanks),
        new Source(
            SourceKind.of(row.cell("kind")), row.cell("citation"), Sight.of(row.cell("status"))));
  }

  private ListValue added(String word) {
    return new ListValue(word, name(word), "", owner.source(word));
  }

  private String name(String word) {
    return owner
        .name(word)
        .or(() -> options.find(kind, word, Reader.BUILDER))
        .orElseGet(() -> word.replace('-', ' '));
  }

  private static String filled(String text, Map<String, String> blanks) {
    return new Template(text).filled(name -> Optional.ofNullable(blanks.get(name)));
  }
}
