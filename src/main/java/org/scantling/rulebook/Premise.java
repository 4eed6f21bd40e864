package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Question;

/**
 * One fact that a rule reads, as it is written.
 *
 * @param absent true where the rule asks that there be none
 * @param bound what the fact is called in the rule, or empty
 * @param fact the kind of fact, such as NumberRow
 * @param body what is asked of it
 */
record Premise(boolean absent, String bound, String fact, String body) {
  private static final Pattern HEAD =
      Pattern.compile(
          "^\\s*(not\\s+)?(?:exists\\s+)?(?:(\\$\\w+)\\s*:\\s*)?([A-Z][A-Za-z.]*)\\(",
          Pattern.MULTILINE);
  private static final Pattern ID = Pattern.compile("\\bid == \"([^\"]+)\"");
  private static final Pattern QUESTION = Pattern.compile("\\bQuestion\\.([A-Z_]+)");
  private static final Pattern DEMAND = Pattern.compile("\\bDemand\\.([A-Z_]+)");

  static List<Premise> in(String when) {
    List<Premise> premises = new ArrayList<>();
    Matcher head = HEAD.matcher(when);
    int from = 0;
    while (head.find(from)) {
      int end = closing(when, head.end());
      premises.add(
          new Premise(
              head.group(1) != null,
              head.group(2) == null ? "" : head.group(2),
              head.group(3),
              when.substring(head.end(), end)));
      from = end;
    }
    return premises;
  }

  /** The place of the bracket that closes the one before {@code from}. */
  private static int closing(String text, int from) {
    int open = 1;
    int at = from;
    while (open > 0 && at < text.length()) {
      open += text.charAt(at) == '(' ? 1 : text.charAt(at) == ')' ? -1 : 0;
      at++;
    }
    return at - 1;
  }

  /** The id that the fact must have. */
  Optional<String> id() {
    Matcher id = ID.matcher(body);
    return id.find() ? Optional.of(id.group(1)) : Optional.empty();
  }

  List<Question> questions() {
    return QUESTION.matcher(body).results().map(each -> Question.valueOf(each.group(1))).toList();
  }

  Optional<Demand> demand() {
    Matcher demand = DEMAND.matcher(body);
    return demand.find() ? Optional.of(Demand.valueOf(demand.group(1))) : Optional.empty();
  }

  /** True where the rule calls the fact, or a part of it, so. */
  boolean binds(String name) {
    return bound.equals(name) || reads(name).isPresent();
  }

  /** The part of the fact that the rule calls so, such as {@code amount} for {@code $most}. */
  Optional<String> reads(String name) {
    Matcher part = Pattern.compile(Pattern.quote(name) + "\\s*:\\s*(\\w+)").matcher(body);
    return part.find() ? Optional.of(part.group(1)) : Optional.empty();
  }

  /** True where a number decides. */
  boolean compares() {
    return WrittenRule.compares(body);
  }

  /** True where the part stands in what is asked or read. */
  boolean names(String part) {
    return Pattern.compile("\\b" + part + "\\b").matcher(WrittenRule.withoutWords(body)).find();
  }
}
