package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of one rule as it stands in its file.
 *
 * @param name question and outcome
 * @param metadata every value that stands behind a key, in the order written
 * @param when what it reads
 * @param then what it finds
 */
public record WrittenRule(
    String name, Map<String, List<String>> metadata, String when, String then) {
  private static final Pattern RULE =
      Pattern.compile(
          "^rule \"([^\"]*)\"\\s*\\n(.*?)^when\\n(.*?)^then\\n(.*?)^end",
          Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern METADATA = Pattern.compile("@(\\w+)\\((\"[^\"]*\"|[^)]*)\\)");
  private static final Pattern COMPARES = Pattern.compile("[<>]=?|\\bover\\(");
  private static final Pattern WORD = Pattern.compile("\"[^\"]*\"");

  /** Every rule of the text of a file, in its order. */
  public static List<WrittenRule> in(String text) {
    List<WrittenRule> rules = new ArrayList<>();
    Matcher rule = RULE.matcher(text);
    while (rule.find()) {
      rules.add(
          new WrittenRule(rule.group(1), metadata(rule.group(2)), rule.group(3), rule.group(4)));
    }
    return List.copyOf(rules);
  }

  private static Map<String, List<String>> metadata(String written) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    Matcher found = METADATA.matcher(written);
    while (found.find()) {
      values
          .computeIfAbsent(found.group(1), key -> new ArrayList<>())
          .add(found.group(2).replace("\"", ""));
    }
    return values;
  }

  /** The id that it has; of more than one, which is a slip, all of them. */
  public String id() {
    return String.join("+", metadata.getOrDefault("id", List.of()));
  }

  /** True where a number decides whether it fires. */
  public boolean compares() {
    return compares(when);
  }

  /** True where a number decides, in what a rule asks of one fact or of all. */
  static boolean compares(String asked) {
    return COMPARES.matcher(withoutWords(asked)).find();
  }

  /** What is asked, but for the words that are compared with. */
  static String withoutWords(String asked) {
    return WORD.matcher(asked).replaceAll("");
  }
}
