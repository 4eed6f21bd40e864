package org.scantling.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.Tables;

/**
 * What checks and worked numbers are made from, so that an explanation can go on where a rule read
 * only a result: rules/reads.csv.
 *
 * <p>A key may end in {@code *} and then holds for checks and options; the longest that fits
 * counts. A reference behind {@code W:} is read only where that load takes part in the combination.
 */
public final class Reads {
  private final Map<String, List<String>> byReference = new LinkedHashMap<>();

  private final Tables tables;

  private Reads(Tables tables) {
    this.tables = tables;
  }

  static Reads read(Tables tables) {
    Reads reads = new Reads(tables);
    for (WordRow row : WordFile.read("reads.csv")) {
      reads.byReference.put(row.cell("reference"), row.list("reads", ";"));
    }
    return reads;
  }

  /**
   * The references that a check or a worked number is made from.
   *
   * @param combination loads that act, such as {@code D+S}; empty where all may
   */
  public List<String> of(String reference, String combination) {
    List<String> all = new ArrayList<>();
    for (String token : key(reference).map(byReference::get).orElse(List.of())) {
      int colon = token.indexOf(':');
      if (colon < 0 || acts(token.substring(0, colon), combination)) {
        all.add(token.substring(colon + 1));
      }
    }
    return all;
  }

  private static boolean acts(String load, String combination) {
    return combination.isEmpty()
        || combination.matches(".*(?<![A-Za-z])" + load + "(?![A-Za-z]).*");
  }

  private Optional<String> key(String reference) {
    if (byReference.containsKey(reference)) {
      return Optional.of(reference);
    }
    boolean option = reference.contains("=");
    if (!option && tables.checks().find(reference).isEmpty()) {
      return Optional.empty();
    }
    return byReference.keySet().stream()
        .filter(key -> key.endsWith("*") && key.contains("=") == option)
        .filter(key -> reference.startsWith(key.substring(0, key.length() - 1)))
        .reduce((one, other) -> one.length() >= other.length() ? one : other);
  }

  /** Everything that any row names, for the test that all of it exists. */
  Map<String, List<String>> rows() {
    return byReference;
  }
}
