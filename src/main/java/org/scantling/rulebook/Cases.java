package org.scantling.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The cases beside a file of rules: which show a rule fire, and which show that none does. */
final class Cases {
  private static final JsonMapper JSON = new JsonMapper();

  private final Map<String, Set<String>> findings = new LinkedHashMap<>();
  private String fault = "";

  static Cases of(RuleFile file) {
    Cases cases = new Cases();
    try {
      file.cases().ifPresent(text -> JSON.readTree(text).forEach(cases::add));
    } catch (JacksonException e) {
      cases.fault = e.getOriginalMessage();
    }
    return cases;
  }

  private void add(JsonNode one) {
    Set<String> rules = new TreeSet<>();
    one.path("finds").forEach(find -> rules.add(find.path("rule").asString("")));
    findings.put(one.path("case").asString(""), rules);
  }

  int count() {
    return findings.size();
  }

  /** Every rule that some case shows fire. */
  Set<String> rules() {
    Set<String> rules = new TreeSet<>();
    findings.values().forEach(rules::addAll);
    return rules;
  }

  /** The cases in which the rule fires. */
  List<String> firing(String rule) {
    return findings.entrySet().stream()
        .filter(one -> one.getValue().contains(rule))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** True where some case shows the rule keep silent. */
  boolean silent(String rule) {
    return findings.values().stream().anyMatch(rules -> !rules.contains(rule));
  }

  /** Why the file cannot be read, or empty. */
  String fault() {
    return fault;
  }
}
