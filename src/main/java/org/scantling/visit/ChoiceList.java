package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * The words that answer one question, picked by number, by word, or by enough of its beginning.
 *
 * @param all in the order in which they are shown
 */
record ChoiceList(List<Choosable> all) {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");

  ChoiceList {
    all = List.copyOf(all);
  }

  List<String> words() {
    return all.stream().map(Choosable::word).toList();
  }

  /** The word that was meant, if it can only be one. */
  Optional<String> one(String typed) {
    String plain = plain(typed);
    if (NUMBER.matcher(plain).matches() && !words().contains(plain)) {
      int place = Integer.parseInt(plain);
      return place >= 1 && place <= all.size()
          ? Optional.of(all.get(place - 1).word())
          : Optional.empty();
    }
    List<String> same = words().stream().filter(word -> plain(word).equals(plain)).toList();
    if (same.size() == 1) {
      return Optional.of(same.get(0));
    }
    List<String> begun =
        words().stream()
            .filter(word -> plain(word).startsWith(plain) || plain.startsWith(plain(word)))
            .toList();
    // What goes on past one word, as sandy past sand, may mean that one as well.
    return begun.size() == 1 && !plain.isEmpty() && plain(begun.get(0)).startsWith(plain)
        ? Optional.of(begun.get(0))
        : Optional.empty();
  }

  /**
   * What was typed, in its parts: with commas between them, or else with spaces.
   *
   * @param known whether something can be one of them
   */
  static List<String> parts(String typed, Predicate<String> known) {
    String and = typed.strip().replaceAll("(?i)\\s+and\\s+", ",");
    List<String> parts = split(and, "[,;]+");
    List<String> words = split(and, "[,;\\s]+");
    return words.stream().allMatch(known) && !parts.stream().allMatch(known) ? words : parts;
  }

  private static List<String> split(String text, String at) {
    List<String> parts = new ArrayList<>();
    for (String part : text.split(at)) {
      if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    return parts;
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", "");
  }
}
