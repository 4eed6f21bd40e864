package org.scantling.intake;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class NearMiss {
  private static final int LONGEST = 60;
  private static final int SHORTEST = 3;

  private NearMiss() {}

  /** Advice such as {@code Maybe clear-width?}, or empty where no single word is near. */
  public static String advice(String written, Collection<String> known) {
    return nearest(written, known).map(ProblemPhrases::maybe).orElse("");
  }

  /** The one known word nearest to the written one, if it is near enough and alone at that. */
  public static Optional<String> nearest(String written, Collection<String> known) {
    String plain = plain(written);
    if (plain.isEmpty() || plain.length() > LONGEST) {
      return Optional.empty();
    }
    int allowed = allowed(plain);
    int best = known.stream().mapToInt(word -> distance(plain, plain(word))).min().orElse(99);
    List<String> nearest =
        known.stream()
            .filter(word -> distance(plain, plain(word)) == best)
            .filter(word -> best == 0 || digits(word).equals(digits(written)))
            .toList();
    return best <= allowed && nearest.size() == 1 ? Optional.of(nearest.get(0)) : Optional.empty();
  }

  private static int allowed(String plain) {
    return plain.length() < SHORTEST ? 0 : Math.max(1, plain.length() / 4);
  }

  /** Another number is another thing, not a slip: 4x5 is no near miss of 4x4. */
  private static String digits(String word) {
    return word.replaceAll("\\D", "");
  }

  /** Case, spaces and hyphens are the commonest slips and count for nothing. */
  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_.-]", "");
  }

  /** Inserted, lost, changed and swapped letters (optimal string alignment). */
  private static int distance(String from, String to) {
    int[][] steps = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        steps[i][j] = i == 0 || j == 0 ? i + j : step(steps, from, to, i, j);
      }
    }
    return steps[from.length()][to.length()];
  }

  private static int step(int[][] steps, String from, String to, int i, int j) {
    int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
    int fewest =
        Math.min(Math.min(steps[i - 1][j], steps[i][j - 1]) + 1, steps[i - 1][j - 1] + change);
    boolean swapped =
        i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1);
    return swapped ? Math.min(fewest, steps[i - 2][j - 2] + 1) : fewest;
  }
}
