package org.scantling.rulebase;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The rules that can be told: those with a row in {@code rules/words/findings.csv}. A rule base
 * that compiled to something else, or to nothing, must not start: an empty rule base looks exactly
 * like a structure that needs no change.
 */
final class WordedRules {
  private static final String FILE = "/org/scantling/rules/words/findings.csv";

  private WordedRules() {}

  /** The first cell of every row but the heading; an id has no comma and no quotation mark. */
  static SortedSet<String> read() {
    try (InputStream in = WordedRules.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new RuleBaseFault("the words of the rules, " + FILE + ", are not on the class path");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      List<String> ids =
          lines
              .lines()
              .skip(1)
              .filter(line -> line.contains(","))
              .map(line -> line.substring(0, line.indexOf(',')))
              .toList();
      return new TreeSet<>(ids);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void compare(SortedSet<String> worded, SortedSet<String> compiled) {
    SortedSet<String> missing = new TreeSet<>(worded);
    missing.removeAll(compiled);
    SortedSet<String> untold = new TreeSet<>(compiled);
    untold.removeAll(worded);
    if (!missing.isEmpty() || !untold.isEmpty()) {
      throw new RuleBaseFault(
          "the compiled rules and rules/words/findings.csv differ; told there but not compiled: "
              + missing
              + "; compiled but not told there: "
              + untold);
    }
  }
}
