package org.scantling.intake;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/**
 * The words that tables own, as the files may use them.
 *
 * @param species keys of the species table
 * @param grades keys of the grades
 * @param soils classes of the soils table
 * @param vines classes of the vines table
 * @param users words of the users table
 * @param trade what people write instead of these
 * @param sizes nominal sizes of the stock table, such as {@code 4x4}
 */
public record Vocabulary(
    Set<String> species,
    Set<String> grades,
    Set<String> soils,
    Set<String> vines,
    Set<String> users,
    Set<String> sizes,
    TradeWords trade) {

  public Vocabulary {
    species = sorted(species);
    grades = sorted(grades);
    soils = sorted(soils);
    vines = sorted(vines);
    users = sorted(users);
    sizes = sorted(sizes);
  }

  /** Of a reader that takes no other words for these. */
  Vocabulary(
      Set<String> species,
      Set<String> grades,
      Set<String> soils,
      Set<String> vines,
      Set<String> users,
      Set<String> sizes) {
    this(species, grades, soils, vines, users, sizes, TradeWords.none());
  }

  /** The words of this house's tables. */
  public static Vocabulary of(Tables tables) {
    return new Vocabulary(
        words(tables.designValues(), DesignValueRow::species),
        words(tables.designValues(), DesignValueRow::grade),
        words(tables.soils(), TableRow::id),
        words(tables.vines(), TableRow::id),
        words(tables.users(), TableRow::id),
        words(tables.sizes(), TableRow::id),
        TradeWords.of(tables));
  }

  private static <T extends TableRow> Set<String> words(
      Table<T> table, Function<? super T, String> word) {
    return table.rows().stream().map(word).collect(Collectors.toSet());
  }

  Set<String> of(TableWords table) {
    return switch (table) {
      case NONE -> Set.of();
      case SPECIES -> species;
      case GRADES -> grades;
      case SOILS -> soils;
      case VINES -> vines;
      case USERS -> users;
      case SIZES -> sizes;
    };
  }

  private static Set<String> sorted(Set<String> words) {
    if (words.isEmpty()) {
      throw new IllegalArgumentException("a vocabulary must have at least one word in each set");
    }
    return Collections.unmodifiableSet(new TreeSet<>(words));
  }
}
