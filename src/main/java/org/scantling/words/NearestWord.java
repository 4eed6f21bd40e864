package org.scantling.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word that a mistyped one was probably meant to be. */
final class NearestWord {
  private static final int LETTERS_A_SLIP = 3;

  private NearestWord() {}

  static Optional<String> to(String written, Collection<String> known) {
    return known.stream()
        .min(Comparator.comparingInt(word -> slips(written, word)))
        .filter(word -> slips(written, word) <= Math.max(1, written.length() / LETTERS_A_SLIP));
  }

  /** Letters swapped count as one slip. */
  private static int slips(String from, String to) {
    return !from.equals(to) && sorted(from).equals(sorted(to)) ? 1 : distance(from, to);
  }

  private static String sorted(String word) {
    char[] letters = word.toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }

  /** Letters inserted, lost or changed. */
  private static int distance(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] line = new int[to.length() + 1];
      line[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        line[j] = Math.min(Math.min(line[j - 1], above[j]) + 1, above[j - 1] + change);
      }
      above = line;
    }
    return above[to.length()];
  }
}
