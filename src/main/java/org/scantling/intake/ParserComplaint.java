package org.scantling.intake;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.scantling.sayings.WordFile;
import tools.jackson.core.JacksonException;

/**
 * What the YAML or JSON parser complains about, in the words of someone who writes such files by
 * hand, and the line where the remedy is likely to be.
 *
 * @param line counted from 1
 * @param words the complaint
 */
record ParserComplaint(int line, String words) {
  private static final Pattern MARK = Pattern.compile("reader, line (\\d{1,7}), column");
  private static final String OTHER = "any other";
  private static final String START = "start";

  private static final String TABLE = "words/parser-complaints.csv";

  /**
   * @param part of the parser's own complaint
   * @param meaning what it means to the writer of the file
   * @param atStart whether the line where the thing begins helps more than where parsing stopped
   */
  private record Known(String part, String meaning, boolean atStart) {
    static List<Known> read() {
      return WordFile.read(TABLE).stream()
          .map(
              row ->
                  new Known(row.cell("complaint"), row.cell("words"), row.cell("at").equals(START)))
          .toList();
    }
  }

  static ParserComplaint of(JacksonException unreadable) {
    String message = unreadable.getOriginalMessage();
    String complaint = withoutExcerpts(message);
    int stopped =
        unreadable.getLocation() == null ? 1 : Math.max(unreadable.getLocation().getLineNr(), 1);
    return Known.read().stream()
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
        .orElse(OTHER);
  }
}
