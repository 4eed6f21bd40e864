package org.scantling.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.Tables;

/**
 * Every list of words of which the site or base file takes one, what each word means and how to
 * tell on the spot which is right: rules/words/closed-lists.csv and closed-list-values.csv, with
 * the words of the tables that own a list.
 */
public final class ClosedLists {
  private final List<ClosedList> lists;

  private ClosedLists(List<ClosedList> lists) {
    this.lists = List.copyOf(lists);
  }

  /** The lists with the words of these tables, whatever a house added to them among them. */
  public static ClosedLists of(Tables tables, UnitSystem units) {
    List<WordRow> values = WordFile.read("words/closed-list-values.csv");
    OptionWords options = OptionWords.read(tables);
    List<ClosedList> lists = new ArrayList<>();
    for (WordRow row : WordFile.read("words/closed-lists.csv")) {
      ListWords words = new ListWords(row, options, ListOwner.of(row.cell("table"), tables, units));
      List<WordRow> own =
          values.stream().filter(each -> each.cell("list").equals(row.cell("list"))).toList();
      lists.add(
          new ClosedList(
              row.cell("list"),
              row.list("keys", " "),
              row.cell("says"),
              row.cell("how"),
              words.values(own)));
    }
    return new ClosedLists(lists);
  }

  /** All of them, in the order in which a site visit comes to them. */
  public List<ClosedList> all() {
    return lists;
  }

  /** The list of a key, such as {@code site.soil} or {@code walkway.users[0]}. */
  public Optional<ClosedList> at(String path) {
    String plain = path.replaceAll("\\[\\d+]", "");
    return lists.stream().filter(each -> each.keys().contains(plain)).findFirst();
  }

  /** The list that somebody asks for by its name, its key or the last part of its key. */
  public Optional<ClosedList> find(String asked) {
    String plain = asked.strip().toLowerCase(Locale.ROOT);
    return lists.stream()
        .filter(each -> each.name().equals(plain) || each.name().concat("s").equals(plain))
        .findFirst()
        .or(() -> at(plain))
        .or(() -> lists.stream().filter(each -> endsIn(each, plain)).findFirst());
  }

  private static boolean endsIn(ClosedList list, String word) {
    return list.keys().stream().anyMatch(key -> key.endsWith("." + word));
  }

  /** What the lists may be asked for by, for a near miss. */
  public Set<String> names() {
    Set<String> names = new HashSet<>();
    lists.forEach(each -> names.add(each.name()));
    return names;
  }
}
