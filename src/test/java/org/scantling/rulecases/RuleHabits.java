package org.scantling.rulecases;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The house's habits for a file of rules, and what breaks them, one sentence each. */
final class RuleHabits {
  private static final Pattern NOT_CODE =
      Pattern.compile("@\\w+\\((\"[^\"]*\"|[^)\"])*\\)|\"[^\"]*\"|//[^\\n]*");
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.$])\\.?\\d[\\w.]*");
  private static final int MOST_COLUMNS = 100;
  private static final Set<String> COUNTS = Set.of("0", "1");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z ]+/[a-z][^/]+[a-z]");
  private static final Pattern ONE_INSERT = Pattern.compile("(?s)insert\\([^;]*Finding[^;]*\\);");
  private static final Set<String> METADATA = Set.of("id", "kind", "source");
  private static final List<String> HEAD =
      List.of("// .*\\?", "// Reads: .*\\.", "// Finds: .*\\.", "// Behind it: .*\\.");
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "\\b(salience|no-loop|eval|modify|update|agenda-group|lock-on-active|function|global"
              + "|ruleflow-group|activation-group|dialect|query|declare|retract|delete)\\b");

  private final DrlFile file;
  private final List<String> complaints = new ArrayList<>();

  private RuleHabits(DrlFile file) {
    this.file = file;
  }

  static List<String> complaints(DrlFile file) {
    RuleHabits habits = new RuleHabits(file);
    habits.head();
    habits.order();
    file.rules().forEach(habits::rule);
    return habits.complaints;
  }

  private void head() {
    String unfolded = file.text().replaceAll("\\n//   ", " ");
    List<String> lines = unfolded.lines().limit(HEAD.size() + 1L).toList();
    file.text()
        .lines()
        .filter(line -> line.length() > MOST_COLUMNS)
        .forEach(line -> say("a line is longer than " + MOST_COLUMNS + " columns: " + line));
    for (int i = 0; i < HEAD.size(); i++) {
      if (!lines.get(i).matches(HEAD.get(i))) {
        say("line " + (i + 1) + " must look like " + HEAD.get(i));
      }
    }
    if (!lines.get(HEAD.size()).equals("package org.scantling.rules." + file.phase().folder())) {
      say("the package must follow the four lines and be that of the folder");
    }
  }

  private void order() {
    FORBIDDEN
        .matcher(withoutWords(file.text()))
        .results()
        .forEach(each -> say(each.group() + " makes the order of rules matter, or hides a rule"));
  }

  private void rule(RuleText rule) {
    if (!NAME.matcher(rule.name()).matches()) {
      say(rule, "must be called by its question and its outcome, with / between them");
    }
    if (!rule.metadata().keySet().equals(METADATA)) {
      say(rule, "must say " + METADATA + ", says " + rule.metadata().keySet());
    }
    rule.metadata()
        .forEach(
            (key, values) -> {
              if (values.size() != 1 || values.get(0).isBlank()) {
                say(rule, "must have one value as @" + key + ", has " + values);
              }
            });
    if (!ONE_INSERT.matcher(rule.then().strip()).matches()) {
      say(rule, "must insert one finding and do nothing else");
    }
    NUMBER
        .matcher(withoutWords(rule.code()))
        .results()
        .map(MatchResult::group)
        .filter(number -> !COUNTS.contains(number))
        .forEach(number -> say(rule, "holds the number " + number + ", which belongs in a table"));
  }

  private static String withoutWords(String text) {
    return NOT_CODE.matcher(text).replaceAll(" ");
  }

  private void say(RuleText rule, String what) {
    say(rule.id() + " " + what);
  }

  private void say(String what) {
    complaints.add(file.place() + ": " + what);
  }
}
