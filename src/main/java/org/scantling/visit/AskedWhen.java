package org.scantling.visit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a question is asked: {@code a=x & b=y | c=z}, or empty for always. {@code -} is an answer
 * that was left out.
 *
 * @param ways each a list of what must all be so; any of them will do
 */
record AskedWhen(List<List<Term>> ways) {
  private static final Pattern TERM = Pattern.compile("([a-z0-9-]+)(!?=)(\\S+)");

  /** That an answer is, or is not, or has in it, a word. */
  record Term(String question, boolean not, String word) {
    boolean holds(Function<String, Optional<String>> answers) {
      return answers
          .apply(question)
          .map(answer -> List.of(answer.split(", ")).contains(word) != not)
          .orElse(false);
    }
  }

  static AskedWhen parse(String text) {
    return text.isEmpty()
        ? new AskedWhen(List.of(List.of()))
        : new AskedWhen(Arrays.stream(text.split("\\|")).map(AskedWhen::all).toList());
  }

  private static List<Term> all(String text) {
    return Arrays.stream(text.split("&")).map(each -> term(each.strip())).toList();
  }

  private static Term term(String text) {
    Matcher match = TERM.matcher(text);
    if (!match.matches()) {
      throw new IllegalStateException("'" + text + "' must be question=word or question!=word");
    }
    return new Term(match.group(1), match.group(2).startsWith("!"), match.group(3));
  }

  /**
   * @param answers what was answered to a question, where it was asked
   */
  boolean holds(Function<String, Optional<String>> answers) {
    return ways.stream().anyMatch(way -> way.stream().allMatch(term -> term.holds(answers)));
  }

  /** The questions that it looks at. */
  Set<String> questions() {
    Set<String> all = new TreeSet<>();
    ways.forEach(way -> way.forEach(term -> all.add(term.question())));
    return all;
  }
}
