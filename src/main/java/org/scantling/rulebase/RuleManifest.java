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
 * The checked-in list of rule ids. A rule base that compiled to something else, or to nothing, must
 * not start: an empty rule base looks exactly like a structure that needs no change.
 */
final class RuleManifest {
  private static final String FILE = "/org/scantling/rules/MANIFEST.csv";

  private RuleManifest() {}

  static SortedSet<String> read() {
    try (InputStream in = RuleManifest.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new RuleBaseFault("the list of rules " + FILE + " is not on the class path");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      List<String> ids =
          lines.lines().skip(1).map(String::strip).filter(each -> !each.isEmpty()).toList();
      return new TreeSet<>(ids);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void compare(SortedSet<String> listed, SortedSet<String> compiled) {
    SortedSet<String> missing = new TreeSet<>(listed);
    missing.removeAll(compiled);
    SortedSet<String> unlisted = new TreeSet<>(compiled);
    unlisted.removeAll(listed);
    if (!missing.isEmpty() || !unlisted.isEmpty()) {
      throw new RuleBaseFault(
          "the compiled rules and rules/MANIFEST.csv differ; listed but not compiled: "
              + missing
              + "; compiled but not listed: "
              + unlisted);
    }
  }
}
