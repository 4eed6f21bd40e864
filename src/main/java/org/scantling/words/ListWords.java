package org.scantling.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Sight;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.sayings.Template;

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
  ListWords(Map<String, String> list, OptionWords options, ListOwner owner) {
    this.kind = list.get("names");
    this.options = options;
    this.owner = owner;
  }

  /** A row for every word comes first where there is one; then what only the table has. */
  List<ListValue> values(List<Map<String, String>> rows) {
    List<ListValue> values = new ArrayList<>();
    Optional<Map<String, String>> every = row(rows, EVERY);
    for (Map<String, String> row : rows) {
      String word = row.get("value");
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

  private static Optional<Map<String, String>> row(List<Map<String, String>> rows, String word) {
    return rows.stream().filter(row -> row.get("value").equals(word)).findFirst();
  }

  private ListValue value(String word, Map<String, String> row) {
    Map<String, String> blanks = owner.blanks(word);
    return new ListValue(
        word,
        row.get("name").isEmpty() ? name(word) : filled(row.get("name"), blanks),
        filled(row.get("how"), blanks),
        new Source(
            SourceKind.of(row.get("kind")), row.get("citation"), Sight.of(row.get("status"))));
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
