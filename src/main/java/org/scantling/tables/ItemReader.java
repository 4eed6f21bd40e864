package org.scantling.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the item of a price: a stick with what tells it apart, or the name of something else. */
final class ItemReader {
  private static final int NEAREST = 6;

  private final PricedItems items;
  private final MadeWords words;
  private final Tables tables;

  ItemReader(Tables tables, PricedItems items) {
    this.tables = tables;
    this.items = items;
    this.words = new MadeWords(tables);
  }

  Optional<ItemKey> read(String cell) {
    List<String> parts = Arrays.asList(cell.strip().split("\\s+"));
    String item = parts.get(0).toLowerCase(Locale.ROOT);
    if (items.stick(item)) {
      return made(parts.subList(1, parts.size())).map(made -> new ItemKey(item, made));
    }
    Optional<PricedItem> known = PricedItem.find(cell);
    if (known.isPresent()) {
      return known.map(each -> ItemKey.of(each.word()));
    }
    boolean plain = parts.size() == 1 && !items.units(item).isEmpty();
    return plain ? Optional.of(ItemKey.of(item)) : Optional.empty();
  }

  /** Each word says one thing of the timber; a word that says nothing of it is none. */
  private Optional<Yard.Made> made(List<String> said) {
    List<Optional<String>> found = new ArrayList<>();
    int read = 0;
    for (String column : MadeWords.COLUMNS) {
      Optional<String> word =
          said.stream().flatMap(each -> words.meant(column, each).stream()).findFirst();
      read += word.isPresent() ? 1 : 0;
      found.add(word);
    }
    return read == said.size()
        ? Optional.of(new Yard.Made(found.get(0), found.get(1), found.get(2)))
        : Optional.empty();
  }

  /** What would be read instead. */
  String accepted(String cell) {
    String first = cell.strip().split("\\s+")[0].toLowerCase(Locale.ROOT);
    if (items.stick(first)) {
      String made =
          MadeWords.COLUMNS.stream()
              .map(column -> String.join(", ", words.known(column)))
              .collect(Collectors.joining(", "));
      return RefusalWords.say("prices.made", "words", made);
    }
    return first.matches("\\d.*")
        ? RefusalWords.say("prices.stick", "sizes", sizes())
        : RefusalWords.say("prices.item", "items", near(first));
  }

  private String sizes() {
    return tables.sizes().rows().stream().map(SizeRow::id).collect(Collectors.joining(", "));
  }

  /** Those that share the most letters with it from the first on. */
  private String near(String word) {
    List<String> kin = new ArrayList<>();
    for (int letters = word.length(); letters > 0 && kin.isEmpty(); letters--) {
      String start = word.substring(0, letters);
      items.names().filter(each -> each.startsWith(start)).forEach(kin::add);
    }
    if (kin.isEmpty()) {
      items.names().forEach(kin::add);
    }
    boolean cut = kin.size() > NEAREST;
    return String.join(", ", cut ? kin.subList(0, NEAREST) : kin) + (cut ? ", ..." : "");
  }
}
