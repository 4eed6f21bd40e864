package org.scantling.visit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Answers as they are kept until the visit is over: a line each, {@code length = 24 ft} where it
 * was told, {@code bays + 4} where it was worked out, {@code soil : clay} where an empty line took
 * the usual one, {@code slope ~ 3 %} where it was gone back over.
 */
public final class AnswersText {
  private static final Pattern LINE = Pattern.compile("([a-z0-9-]+) ([=:+~]) (.*)");

  private AnswersText() {}

  /** The text of the file, after a comment. */
  public static String of(VisitAnswers answers, String comment) {
    StringBuilder text = new StringBuilder("# ").append(comment).append('\n');
    answers.given().forEach((id, each) -> line(text, id, sign(each.from()), each.text()));
    answers.earlier().forEach((id, each) -> line(text, id, "~", each));
    return text.toString();
  }

  private static String sign(VisitAnswers.From from) {
    return switch (from) {
      case TOLD -> "=";
      case WORKED -> "+";
      case USUAL -> ":";
    };
  }

  private static VisitAnswers.From from(String sign) {
    return switch (sign) {
      case "=" -> VisitAnswers.From.TOLD;
      case "+" -> VisitAnswers.From.WORKED;
      default -> VisitAnswers.From.USUAL;
    };
  }

  private static void line(StringBuilder text, String id, String sign, String answer) {
    text.append(id).append(' ').append(sign).append(' ').append(answer).append('\n');
  }

  /** The answers of a file; a line that is none is passed over. */
  public static VisitAnswers read(String text) {
    Map<String, VisitAnswers.Given> given = new LinkedHashMap<>();
    Map<String, String> earlier = new LinkedHashMap<>();
    for (String line : text.lines().toList()) {
      Matcher match = LINE.matcher(line);
      if (match.matches() && match.group(2).equals("~")) {
        earlier.put(match.group(1), match.group(3).strip());
      } else if (match.matches()) {
        VisitAnswers.From from = from(match.group(2));
        given.put(match.group(1), new VisitAnswers.Given(match.group(3).strip(), from));
      }
    }
    return new VisitAnswers(given, earlier);
  }
}
