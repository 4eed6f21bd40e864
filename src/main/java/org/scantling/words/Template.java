package org.scantling.words;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with blanks: {@code {height}} is filled in, and a part in square brackets is left out
 * where one of its blanks has nothing to fill it with. {@code {bays|bay|bays}} is a count with its
 * noun: the first of the two words goes with one.
 */
final class Template {
  private static final Pattern BLANK =
      Pattern.compile("\\{([A-Za-z-]+)(?:\\|([^{}|]+)\\|([^{}|]+))?}");
  private static final Pattern PART = Pattern.compile("\\[([^\\[\\]]*)]");

  /** In figures or in letters. */
  private static final Set<String> ONE = Set.of("1", "one");

  private final String text;

  Template(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  /**
   * The sentence.
   *
   * @param fill what goes into a blank, if anything
   * @throws IllegalArgumentException when a needed blank stays empty
   */
  String filled(Function<String, Optional<String>> fill) {
    String whole = PART.matcher(text).replaceAll(part -> quoted(part(part.group(1), fill)));
    return sentence(
        BLANK
            .matcher(whole)
            .replaceAll(
                blank ->
                    quoted(
                        fill.apply(blank.group(1))
                            .map(said -> counted(said, blank))
                            .orElseThrow(() -> empty(blank.group(1))))));
  }

  private static String counted(String said, MatchResult blank) {
    String noun = blank.group(ONE.contains(said) ? 2 : 3);
    return noun == null ? said : said + " " + noun;
  }

  private static String part(String text, Function<String, Optional<String>> fill) {
    boolean full = blanks(text).stream().allMatch(name -> fill.apply(name).isPresent());
    return full ? text : "";
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
    return text.strip().replaceAll("\\.\\.$", ".");
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text);
  }

  private IllegalArgumentException empty(String name) {
    return new IllegalArgumentException("nothing fills {" + name + "} in '" + text + "'");
  }
}
