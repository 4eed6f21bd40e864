package org.scantling.sayings;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with blanks: {@code {height}} is filled in, and a part in square brackets is left out
 * where one of its blanks has nothing to fill it with; brackets without a blank stay as they are.
 * {@code {bays|bay|bays}} is a count with its noun: the first of the two words goes with one.
 * {@code {bays?One bay is|# bays are}} chooses by a count and says it only where {@code #} stands
 * for it. {@code {new!}} says nothing: its part is said where there is such a blank at all.
 */
public final class Template {
  private static final Pattern BLANK =
      Pattern.compile("\\{([A-Za-z-]+!?)(?:([|?])([^{}|]+)\\|([^{}|]+))?}");
  private static final Pattern PART = Pattern.compile("\\[([^\\[\\]{}]*\\{[^\\[\\]]*)]");

  /** Ends the name of a blank that is there or not, and says nothing itself. */
  static final String FLAG = "!";

  /** In figures or in letters. */
  private static final Set<String> ONE = Set.of("1", "one");

  private final String text;

  public Template(String text) {
    this.text = text;
  }

  /** The text with its blanks. */
  public String text() {
    return text;
  }

  /**
   * The sentence.
   *
   * @param fill what goes into a blank, if anything
   * @throws IllegalArgumentException when a needed blank stays empty
   */
  public String filled(Function<String, Optional<String>> fill) {
    return filled(fill, name -> fill.apply(name.replace(FLAG, "")).isPresent());
  }

  /**
   * The same.
   *
   * @param given whether a part in brackets with this blank is said
   */
  String filled(Function<String, Optional<String>> fill, Predicate<String> given) {
    String whole = PART.matcher(text).replaceAll(part -> quoted(part(part.group(1), given)));
    return sentence(
        BLANK
            .matcher(whole)
            .replaceAll(
                blank ->
                    blank.group(1).endsWith(FLAG)
                        ? ""
                        : quoted(
                            fill.apply(blank.group(1))
                                .map(said -> counted(said, blank))
                                .orElseThrow(() -> empty(blank.group(1))))));
  }

  private static String counted(String said, MatchResult blank) {
    String words = blank.group(ONE.contains(said) ? 3 : 4);
    if (words == null) {
      return said;
    }
    return blank.group(2).equals("?") ? words.replace("#", said) : said + " " + words;
  }

  private static String part(String text, Predicate<String> given) {
    return blanks(text).stream().allMatch(given) ? text : "";
  }

  private static Set<String> blanks(String text) {
    Set<String> names = new TreeSet<>();
    Matcher blank = BLANK.matcher(text);
    while (blank.find()) {
      names.add(blank.group(1));
    }
    return names;
  }

  private static String sentence(String text) {
    return text.strip().replaceAll("(?<!\\.)\\.\\.$", ".");
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text);
  }

  private IllegalArgumentException empty(String name) {
    return new IllegalArgumentException("nothing fills {" + name + "} in '" + text + "'");
  }
}
