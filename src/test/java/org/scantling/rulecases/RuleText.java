package org.scantling.rulecases;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.rulebook.WrittenRule;

/** One rule as it is written, and what its habits are held against. */
record RuleText(WrittenRule rule) {
  String id() {
    return rule.id();
  }

  String name() {
    return rule.name();
  }

  Map<String, List<String>> metadata() {
    return rule.metadata();
  }

  String when() {
    return rule.when();
  }

  String then() {
    return rule.then();
  }

  /** True when a number decides whether the rule fires, so that there is a boundary to test. */
  boolean compares() {
    return rule.compares();
  }

  /** Everything that runs. */
  String code() {
    return when() + "\n" + then();
  }

  /** The words that stand directly behind {@code FactType(id == }, for one type of fact. */
  List<String> idsOf(String factType) {
    Matcher found = Pattern.compile("\\b" + factType + "\\(\\s*id == \"([^\"]+)\"").matcher(code());
    return found.results().map(each -> each.group(1)).toList();
  }
}
