package org.scantling.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Stack;
import java.util.regex.Pattern;
import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Puts together what a shell has parted: {@code 16 in} and {@code 2 x 6} typed without quotes. No
 * option of a command that reads so takes a bare word that could stand there by itself.
 */
final class LooseWords implements IParameterPreprocessor {
  private static final Pattern NUMBER = Pattern.compile("(?:.*[,\\s])?\\d+(?:\\.\\d+)?");
  private static final Pattern FRACTION = Pattern.compile("\\d+/\\d+(?:\".*)?");
  private static final Pattern OPEN = Pattern.compile("(?:.*[,\\s])?(?:\\d+/\\d+|\\d+ sq)");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?:in|inch|inches|ft|feet|foot|mm|cm|m|m2|psf|psi|lb|lbs|kPa|kN|kN/m2|N|mph|m/s|km/h|sq)"
              + "(?:,.*)?");
  private static final Pattern FEET = Pattern.compile("(?:.*[,\\s])?\\d+ ?(?:ft|feet)");
  private static final Pattern INCHES = Pattern.compile("(?:in|inch|inches)(?:,.*)?");
  private static final Pattern SIZE_START = Pattern.compile("(?:\\d-)?\\d{1,3}");
  private static final Pattern TIMES = Pattern.compile("[xX×]");
  private static final Pattern SIZE_END = Pattern.compile("\\d{1,3}");

  @Override
  @SuppressWarnings("JdkObsolete") // picocli hands the words over so
  public boolean preprocess(
      Stack<String> args, CommandSpec command, ArgSpec option, Map<String, Object> info) {
    List<String> words = new ArrayList<>(args);
    Collections.reverse(words);
    List<String> joined = joined(words);
    Collections.reverse(joined);
    args.clear();
    args.addAll(joined);
    return false;
  }

  static List<String> joined(List<String> words) {
    List<String> joined = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean size =
          SIZE_START.matcher(word).matches()
              && i + 2 < words.size()
              && TIMES.matcher(words.get(i + 1)).matches()
              && SIZE_END.matcher(words.get(i + 2)).matches();
      if (size) {
        joined.add(word + "x" + words.get(i + 2));
        i += 2;
      } else if (inchesFollow(joined, words, i)) {
        joined.set(joined.size() - 1, joined.get(joined.size() - 1) + " " + word);
      } else if (!joined.isEmpty() && belongs(joined.get(joined.size() - 1), word)) {
        joined.set(joined.size() - 1, joined.get(joined.size() - 1) + " " + word);
      } else {
        joined.add(word);
      }
    }
    return joined;
  }

  /** Feet that inches follow: 1 ft 4 in. */
  private static boolean inchesFollow(List<String> joined, List<String> words, int place) {
    return !joined.isEmpty()
        && FEET.matcher(joined.get(joined.size() - 1)).matches()
        && SIZE_END.matcher(words.get(place)).matches()
        && place + 1 < words.size()
        && INCHES.matcher(words.get(place + 1)).matches();
  }

  private static boolean belongs(String before, String word) {
    return NUMBER.matcher(before).matches()
        ? UNIT.matcher(word).matches() || FRACTION.matcher(word).matches()
        : OPEN.matcher(before).matches() && UNIT.matcher(word).matches();
  }
}
