package org.scantling.rulebook;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.reasons.Question;

/**
 * One rule as it is written.
 *
 * @param place the file it stands in
 * @param id never changes
 * @param name question and outcome
 * @param premises what it reads
 * @param then what it finds, as written
 */
record RuleText(String place, String id, String name, List<Premise> premises, String then) {
  private static final Pattern FINDING = Pattern.compile("Finding\\.(\\w+)\\(");
  private static final Pattern SUBJECT =
      Pattern.compile("Finding\\.\\w+\\(\\s*(\\$\\w+|Question\\.\\w+)");

  static List<RuleText> in(RuleFile file) {
    return WrittenRule.in(file.text()).stream()
        .map(
            rule ->
                new RuleText(
                    file.place(), rule.id(), rule.name(), Premise.in(rule.when()), rule.then()))
        .toList();
  }

  /** What the rule decides, in the words behind the slash of its name. */
  String outcome() {
    return name.substring(name.indexOf('/') + 1);
  }

  Verdict verdict() {
    Matcher finding = FINDING.matcher(then);
    return finding.find() ? Verdict.of(finding.group(1)) : Verdict.NONE;
  }

  /** The questions it finds something about: named, or those of the fact it judges. */
  List<Question> questions() {
    Matcher subject = SUBJECT.matcher(then);
    if (!subject.find() || verdict() == Verdict.REFUSES || verdict() == Verdict.TELLS) {
      return List.of();
    }
    if (subject.group(1).startsWith("Question.")) {
      return List.of(Question.valueOf(subject.group(1).substring("Question.".length())));
    }
    return premises.stream()
        .filter(premise -> premise.binds(subject.group(1)))
        .flatMap(premise -> premise.questions().stream())
        .toList();
  }
}
