package org.scantling.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the cases beside a file of rules. */
final class CaseFile {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(tools.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private final DrlFile rules;
  private final TableCells cells;

  private CaseFile(DrlFile rules, TableCells cells) {
    this.rules = rules;
    this.cells = cells;
  }

  /** The cases of all rules. */
  static List<RuleCase> all(TableCells cells) {
    return DrlFile.all().stream().flatMap(each -> beside(each, cells).stream()).toList();
  }

  static List<RuleCase> beside(DrlFile rules, TableCells cells) {
    if (!Files.exists(rules.cases())) {
      throw new CaseFault(rules.path() + " must have its cases beside it: " + rules.cases());
    }
    try {
      return read(rules, Files.readString(rules.cases()), cells);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<RuleCase> read(DrlFile rules, String text, TableCells cells) {
    return new CaseFile(rules, cells).cases(text);
  }

  private List<RuleCase> cases(String text) {
    JsonNode root;
    try {
      root = JSON.readTree(text);
    } catch (JacksonException e) {
      throw new CaseFault(rules.cases() + ": " + e.getMessage());
    }
    if (!root.isArray() || root.isEmpty()) {
      throw new CaseFault(rules.cases() + ": must be a list of cases");
    }
    List<RuleCase> cases = new ArrayList<>();
    Set<String> sentences = new HashSet<>();
    for (JsonNode node : root.values()) {
      RuleCase one = one(node);
      if (!sentences.add(one.sentence())) {
        throw new CaseFault(rules.cases() + ": two cases are called '" + one.sentence() + "'");
      }
      cases.add(one);
    }
    return cases;
  }

  private RuleCase one(JsonNode node) {
    Entry entry = new Entry(rules.cases().toString(), node, new NumberWords(cells), n -> n);
    String sentence = entry.word("case");
    String where = rules.place() + ", " + sentence;
    List<Found> finds = new ArrayList<>();
    FindingReader reader = new FindingReader(cells);
    entry.list("finds").forEach(each -> finds.add(ours(reader.read(where, each), where)));
    RuleCase one = new RuleCase(rules, sentence, entry.list("facts"), finds);
    entry.refuseOthers();
    one.facts(cells, number -> number);
    return one;
  }

  private Found ours(Found found, String where) {
    if (!rules.ids().contains(found.rule())) {
      throw new CaseFault(
          where + ": rule " + found.rule() + " must be one of this file: " + rules.ids());
    }
    return found;
  }
}
