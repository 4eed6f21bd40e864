package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Shown;

/** Messages for a terminal: no line wider than it, and what an editor looks for at its start. */
public final class ErrorText {
  private static final int WIDTH = 80;
  private static final String NEXT = "  ";
  private static final int LONGEST_LINE = 1_500;
  private static final int MOST_LETTERS = 8_000;

  /** {@code site.yaml:14: walkway.length: }, which tools read and which therefore never breaks. */
  private static final Pattern PLACE = Pattern.compile("^\\S+:\\d+: (?:\\S+: )?|^\\S+: ");

  private ErrorText() {}

  /** The message, each of its lines wrapped; what goes on is set in by two spaces. */
  public static String of(String message) {
    List<String> lines = new ArrayList<>();
    int letters = 0;
    for (String line : message.lines().toList()) {
      String shown = cut(Shown.of(line));
      letters += shown.length();
      if (letters > MOST_LETTERS) {
        lines.add(Sayings.of("error-text").say("more"));
        break;
      }
      lines.addAll(wrapped(shown));
    }
    return String.join("\n", lines);
  }

  private static String cut(String line) {
    if (line.length() <= LONGEST_LINE) {
      return line;
    }
    int end = line.offsetByCodePoints(0, line.codePointCount(0, LONGEST_LINE - 1));
    return Sayings.of("error-text").say("cut", "line", line.substring(0, end));
  }

  private static List<String> wrapped(String line) {
    Matcher place = PLACE.matcher(line);
    String first = place.find() ? place.group() : indent(line);
    String rest = line.substring(first.length());
    String next = indent(line) + NEXT;
    if (first.length() > WIDTH / 2) {
      // A long path would push the words off the screen.
      List<String> lines = new ArrayList<>(List.of(first.stripTrailing()));
      lines.addAll(Wrap.lines(rest, next, next, WIDTH));
      return lines;
    }
    return Wrap.lines(rest, first, next, WIDTH);
  }

  private static String indent(String line) {
    return line.substring(0, line.length() - line.stripLeading().length());
  }
}
