package org.scantling.intake;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;

/**
 * What the YAML or JSON parser complains about, in the words of someone who writes such files by
 * hand, and the line where the remedy is likely to be.
 *
 * @param line counted from 1
 * @param words the complaint
 */
record ParserComplaint(int line, String words) {
  private static final Pattern MARK = Pattern.compile("in reader, line (\\d{1,7}), column");

  /**
   * @param part of the parser's own complaint
   * @param meaning what it means to the writer of the file
   * @param atStart whether the line where the thing begins helps more than where parsing stopped
   */
  private record Known(String part, String meaning, boolean atStart) {}

  private static final List<Known> KNOWN =
      List.of(
          new Known("(TAB)", "a tab where only spaces may stand", false),
          new Known(
              "expected <block end>",
              "this line fits neither the indentation nor the quotes before it",
              false),
          new Known("expected ',' or ']'", "a list [ is not closed with ]", true),
          new Known("expected ',' or '}'", "a group { is not closed with }", true),
          new Known("unexpected end of stream", "a quote is not closed", true),
          new Known("mapping values are not allowed", "a second colon in one line", false),
          new Known("expected ':'", "a line without a colon after its key", true),
          new Known("Expected a property name", "a key that is not a word", false),
          new Known("special characters are not allowed", "a control character", false),
          new Known("comment?", "a comment, which JSON does not have", false),
          new Known("Non-standard token", "a bare word where a value in quotes is needed", false),
          new Known("Unrecognized token", "a bare word where a value in quotes is needed", false),
          new Known("Illegal unquoted character", "a quote is not closed in its own line", false),
          new Known("closing quote", "a quote is not closed", false),
          new Known("Unexpected end-of-input", "the text ends too early", false),
          new Known(
              "double-quote to start property name",
              "a comma too many, or a key without double quotes",
              false),
          new Known(
              "cannot start any token", "a sign such as @ or % before a text: quote it", false),
          new Known("expected the node content", "a comma or bracket too many", false),
          new Known("<document start>", "a line that does not go on from the one before", false),
          new Known("expecting a colon", "a colon is missing after a key", false),
          new Known("expected a v", "a value is missing, or one without double quotes", false),
          new Known("close marker", "brackets that do not match", false),
          new Known("character escape", "a backslash where none may stand", false),
          new Known("Illegal character", "a control character", false),
          new Known(
              "expecting comma", "a comma is missing, or a value without double quotes", false));

  static ParserComplaint of(JacksonException unreadable) {
    String message = unreadable.getOriginalMessage();
    String complaint = withoutExcerpts(message);
    int stopped =
        unreadable.getLocation() == null ? 1 : Math.max(unreadable.getLocation().getLineNr(), 1);
    return KNOWN.stream()
        .filter(known -> complaint.contains(known.part()))
        .findFirst()
        .map(known -> new ParserComplaint(line(message, known, stopped), known.meaning()))
        .orElseGet(() -> new ParserComplaint(stopped, ProblemPhrases.shortened(complaint)));
  }

  private static int line(String message, Known known, int stopped) {
    List<Integer> marks = MARK.matcher(message).results().map(ParserComplaint::lineOf).toList();
    if (marks.isEmpty()) {
      return stopped;
    }
    return known.atStart() ? marks.get(0) : marks.get(marks.size() - 1);
  }

  private static int lineOf(MatchResult mark) {
    return Integer.parseInt(mark.group(1));
  }

  /** The parser's own words, without its position report and its excerpts of the file. */
  private static String withoutExcerpts(String message) {
    return message
        .lines()
        .filter(line -> !line.startsWith(" ") && !line.startsWith("while "))
        .findFirst()
        .orElse("it cannot be parsed");
  }
}
