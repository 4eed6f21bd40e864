package org.scantling.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Source;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.SizeRow;
import org.scantling.tables.SoilRow;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;
import org.scantling.tables.UserRow;

/** The table that the words of a closed list come from, or none. */
final class ListOwner {
  private final boolean any;
  private final Map<String, Owned> owned = new LinkedHashMap<>();

  /** What the table says of one word. */
  private record Owned(Optional<String> name, Map<String, String> blanks, Source source) {}

  private ListOwner(boolean any) {
    this.any = any;
  }

  static ListOwner of(String table, Tables tables, UnitSystem units) {
    return switch (table) {
      case "soils" -> named(tables.soils(), SoilRow::words);
      case "exposure" -> named(tables.exposures(), ExposureRow::words);
      case "users" -> users(tables, units);
      case "vines" -> unnamed(tables.vines(), TableRow::id);
      case "species" -> unnamed(tables.designValues(), DesignValueRow::species);
      case "grades" -> unnamed(tables.designValues(), DesignValueRow::grade);
      case "sizes" -> sizes(tables, units);
      case "" -> new ListOwner(false);
      default ->
          throw new IllegalStateException("rules/words/closed-lists.csv: no table '" + table + "'");
    };
  }

  private static <T extends TableRow> ListOwner named(
      Table<T> table, Function<? super T, String> words) {
    ListOwner owner = new ListOwner(true);
    for (T row : table.rows()) {
      owner.put(row.id(), Optional.of(words.apply(row)), Map.of(), row.source());
    }
    return owner;
  }

  private static <T extends TableRow> ListOwner unnamed(
      Table<T> table, Function<? super T, String> word) {
    ListOwner owner = new ListOwner(true);
    for (T row : table.rows()) {
      owner.put(word.apply(row), Optional.empty(), Map.of(), row.source());
    }
    return owner;
  }

  private static ListOwner users(Tables tables, UnitSystem units) {
    ListOwner owner = new ListOwner(true);
    for (UserRow row : tables.users().rows()) {
      Map<String, String> blanks =
          Map.of(
              "width", length(row.clearWidthIn(), units),
              "headroom", length(row.headroomIn(), units));
      owner.put(row.id(), Optional.of(row.words()), blanks, row.source());
    }
    return owner;
  }

  private static ListOwner sizes(Tables tables, UnitSystem units) {
    ListOwner owner = new ListOwner(true);
    for (SizeRow row : tables.sizes().rows()) {
      Map<String, String> blanks =
          Map.of(
              "thickness", length(row.thicknessIn(), units),
              "width", length(row.widthIn(), units));
      owner.put(row.id(), Optional.empty(), blanks, row.source());
    }
    return owner;
  }

  private static String length(double lengthIn, UnitSystem units) {
    return MeasureText.print(Measure.inches(lengthIn), units);
  }

  private void put(String word, Optional<String> name, Map<String, String> blanks, Source source) {
    owned.putIfAbsent(word, new Owned(name, blanks, source));
  }

  /** The words that the table has, in its order. */
  List<String> words() {
    return List.copyOf(owned.keySet());
  }

  /** Whether the word may stand in the list. */
  boolean mayHave(String word) {
    return !any || owned.containsKey(word);
  }

  Optional<String> name(String word) {
    return Optional.ofNullable(owned.get(word)).flatMap(Owned::name);
  }

  Map<String, String> blanks(String word) {
    return Optional.ofNullable(owned.get(word)).map(Owned::blanks).orElse(Map.of());
  }

  /**
   * @throws IllegalArgumentException when the table has no such word
   */
  Source source(String word) {
    return Optional.ofNullable(owned.get(word))
        .map(Owned::source)
        .orElseThrow(() -> new IllegalArgumentException("no table has a word '" + word + "'"));
  }
}
