package org.scantling.rulecases;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule as it is written.
 *
 * @param name question and outcome
 * @param metadata every value that stands behind a key, in the order written
 */
record RuleText(String name, Map<String, List<String>> metadata, String when, String then) {
  private static final Pattern COMPARES = Pattern.compile("[<>]=?|\\bover\\(");
  private static final Pattern STRING = Pattern.compile("\"[^\"]*\"");

  String id() {
    return String.join("+", metadata.getOrDefault("id", List.of()));
  }

  /** True when a number decides whether the rule fires, so that there is a boundary to test. */
  boolean compares() {
    return COMPARES.matcher(STRING.matcher(when).replaceAll("\"\"")).find();
  }

  /** Everything that runs. */
  String code() {
    return when + "\n" + then;
  }

  /** The words that stand directly behind {@code FactType(id == }, for one type of fact. */
  List<String> idsOf(String factType) {
    Matcher found = Pattern.compile("\\b" + factType + "\\(\\s*id == \"([^\"]+)\"").matcher(code());
    return found.results().map(each -> each.group(1)).toList();
  }
}
