package org.scantling.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How easily a text reads: the formula of R. Flesch, A new readability yardstick, Journal of
 * Applied Psychology 32(3), 1948, pp. 221-233: 206.835 - 0.846 wl - 1.015 sl, where wl is syllables
 * a hundred words and sl words a sentence. From 60 up a text is plain English, for readers of
 * thirteen and more.
 *
 * <p>What counts, as far as a program can tell:
 *
 * <ul>
 *   <li>A sentence ends at a full stop, question mark, exclamation mark, colon or semicolon that a
 *       space or the end follows: units of thought that are marked off count by themselves.
 *   <li>A word is what stands between spaces and has a letter. Figures and sizes such as 4x4 are
 *       left out of both counts, and so are units behind a figure: they are short to say and would
 *       only flatter the text.
 *   <li>A syllable is a run of vowels (a, e, i, o, u, y), with these exceptions: a silent e at the
 *       end, before -ly and the like, and that of -es and -ed does not count, unless it stands
 *       after what makes it sound (-le after a consonant, -ted, -ded, -ses, -ches and the like);
 *       ia, io but in -tion and -sion, ien, eo, ua and uo are two; no word has less than one; a few
 *       words are known by heart.
 * </ul>
 */
public final class ReadingEase {
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?:;])\\s+|\\n\\n+");
  private static final Pattern MEASURE =
      Pattern.compile(
          "\\d[\\d./,]*(?:[ -]\\d+/\\d+)?\\s?(?:ft|in|cm|m|mph|km/h|psf|lb|kg|%)?(?![\\w])");
  private static final Pattern SILENT =
      Pattern.compile(
          "(?<=[^aeiouyl])e$|(?<=[aeiouyrl])le$|(?<![aeiouytd])ed$|(?<![aeiouysxzcg]|ch|sh)es$"
              + "|(?<=[^aeiouyl])e(?=(?:ly|ful|fully|ment|ments|ness|less)$)");
  private static final Pattern APART =
      Pattern.compile("ia(?!l$|n$)|i(?=o(?!n|us))|i(?=en[ct])|eo(?!u|ple)|(?<!q|g)u(?=[ao])");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
  private static final Map<String, Integer> BY_HEART =
      Map.of(
          "being", 2, "doing", 2, "going", 2, "seeing", 2, "quiet", 2, "science", 2, "lion", 2,
          "area", 3, "idea", 3, "serious", 3);

  private final long sentences;
  private final long words;
  private final long syllables;

  private ReadingEase(long sentences, long words, long syllables) {
    this.sentences = sentences;
    this.words = words;
    this.syllables = syllables;
  }

  /** Counts a text of plain prose. */
  public static ReadingEase of(String text) {
    String spoken = MEASURE.matcher(text).replaceAll("");
    List<String> sentences =
        SENTENCE.splitAsStream(spoken).filter(each -> !words(each).isEmpty()).toList();
    List<String> words = words(spoken);
    return new ReadingEase(
        Math.max(1, sentences.size()),
        words.size(),
        words.stream().mapToLong(ReadingEase::syllables).sum());
  }

  private static List<String> words(String text) {
    return Arrays.stream(text.split("[\\s/-]+"))
        .map(each -> each.replaceAll("[^A-Za-z']", ""))
        .filter(each -> !each.isEmpty() && !each.equals("x"))
        .toList();
  }

  /** Syllables of one word. */
  static int syllables(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replaceAll("'s$|'", "");
    if (BY_HEART.containsKey(plain)) {
      return BY_HEART.get(plain);
    }
    String sounded = SILENT.matcher(plain).replaceAll("");
    long runs =
        VOWELS.matcher(sounded).results().count() + APART.matcher(sounded).results().count();
    return (int) Math.max(1, runs);
  }

  public long words() {
    return words;
  }

  /** The score: 100 reads very easily, 60 plainly, 30 hard. */
  public double score() {
    return words == 0 ? 100 : 206.835 - 84.6 * syllables / words - 1.015 * words / sentences;
  }

  @Override
  public String toString() {
    return "%.1f (%d words, %d sentences, %d syllables)"
        .formatted(score(), words, sentences, syllables);
  }
}
