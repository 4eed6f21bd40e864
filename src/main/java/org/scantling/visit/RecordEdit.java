package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts an item at the end of the record of a base design by changing its text where it must be
 * changed and nowhere else, so that comments and order stay. What comes of it has to be read back
 * by whoever asks.
 */
public final class RecordEdit {
  private static final Pattern PROVEN = Pattern.compile("proven\\s*:(.*)");
  private static final Pattern RECORD = Pattern.compile("record\\s*:");
  private static final String STEP = "  ";

  private final String end;
  private final List<String> lines;

  private RecordEdit(String text) {
    this.end = text.contains("\r\n") ? "\r\n" : "\n";
    this.lines = new ArrayList<>(text.lines().toList());
  }

  /**
   * The text with the item in it.
   *
   * @return empty where the text is not laid out in a way that is known
   */
  public static Optional<String> with(String text, String item) {
    return new RecordEdit(text).edited(item);
  }

  private Optional<String> edited(String item) {
    for (int i = 0; i < lines.size(); i++) {
      Matcher proven = PROVEN.matcher(lines.get(i));
      if (proven.matches()) {
        return proven.group(1).strip().startsWith("{")
            ? inBraces(i, lines.get(i).indexOf('{'), item)
            : inBlock(i, item);
      }
    }
    return Optional.empty();
  }

  /** {@code proven: { built: 2011, record: [ ... ] }}. */
  private Optional<String> inBraces(int line, int column, String item) {
    String whole = joined();
    int open = at(line, column);
    int close = FlowText.close(whole, open);
    Matcher record = RECORD.matcher(whole);
    if (close < 0) {
      return Optional.empty();
    }
    if (record.region(open, close).find()) {
      int list = whole.indexOf('[', record.end());
      return list < 0 || list > close ? Optional.empty() : intoList(whole, list, item);
    }
    String before = whole.substring(0, close).stripTrailing();
    String comma = before.endsWith("{") || before.endsWith(",") ? " " : ", ";
    return Optional.of(before + comma + "record: [ " + item + " ] " + whole.substring(close));
  }

  private static Optional<String> intoList(String whole, int open, String item) {
    int close = FlowText.close(whole, open);
    if (close < 0) {
      return Optional.empty();
    }
    String before = whole.substring(0, close).stripTrailing();
    String comma = before.endsWith("[") || before.endsWith(",") ? " " : ", ";
    return Optional.of(before + comma + item + " " + whole.substring(close));
  }

  private Optional<String> inBlock(int proven, String item) {
    int last = lastBelow(proven, 0);
    if (last == proven) {
      return Optional.empty();
    }
    int indent = indent(firstBelow(proven));
    for (int i = proven + 1; i <= last; i++) {
      if (content(i) && indent(i) == indent && RECORD.matcher(bare(i)).lookingAt()) {
        return intoRecord(i, indent, item);
      }
    }
    lines.add(last + 1, " ".repeat(indent) + "record:");
    lines.add(last + 2, " ".repeat(indent) + STEP + "- " + item);
    return Optional.of(joined());
  }

  private Optional<String> intoRecord(int record, int indent, String item) {
    int bracket = lines.get(record).indexOf('[');
    if (bracket >= 0) {
      return intoList(joined(), at(record, bracket), item);
    }
    int first = firstBelow(record);
    if (first >= lines.size() || !bare(first).startsWith("-")) {
      return Optional.empty();
    }
    int dash = indent(first);
    int last = lastItem(first, Math.max(dash, indent));
    lines.add(last + 1, " ".repeat(dash) + "- " + item);
    return Optional.of(joined());
  }

  /** The last line of a list whose items begin at that column. */
  private int lastItem(int first, int dash) {
    int last = first;
    for (int i = first; i < lines.size(); i++) {
      boolean over = indent(i) < dash || (indent(i) == dash && !bare(i).startsWith("-"));
      if (content(i) && over) {
        return last;
      }
      last = content(i) ? i : last;
    }
    return last;
  }

  /** The last line of what lies below a key. */
  private int lastBelow(int key, int indent) {
    int last = key;
    for (int i = key + 1; i < lines.size(); i++) {
      if (content(i) && indent(i) <= indent) {
        return last;
      }
      last = content(i) ? i : last;
    }
    return last;
  }

  private int firstBelow(int line) {
    int first = line + 1;
    while (first < lines.size() && !content(first)) {
      first++;
    }
    return first;
  }

  private boolean content(int line) {
    return !bare(line).isEmpty() && !bare(line).startsWith("#");
  }

  private int indent(int line) {
    String text = lines.get(line);
    return text.length() - text.stripLeading().length();
  }

  private String bare(int line) {
    return lines.get(line).strip();
  }

  /** Where a line and column are in the whole. */
  private int at(int line, int column) {
    int at = column;
    for (int i = 0; i < line; i++) {
      at += lines.get(i).length() + end.length();
    }
    return at;
  }

  private String joined() {
    return String.join(end, lines) + end;
  }
}
