package org.scantling.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a line of YAML that cannot be parsed was probably meant to be: each likely slip is put right
 * and tried, and the first with which the parser gets further is offered. So what is offered works.
 */
final class SyntaxRepair {
  private static final int LONGEST_TEXT = 1 << 16;
  private static final Pattern EQUALS =
      Pattern.compile("(\\s*(?:- )?)([A-Za-z][A-Za-z-]*)\\s*=\\s*(\\S.*)");
  private static final Pattern GLUED = Pattern.compile("(\\s*(?:- )?[A-Za-z][A-Za-z-]*):(\\S.*)");
  private static final Pattern NO_COLON =
      Pattern.compile("(\\s*(?:- )?)([A-Za-z][A-Za-z-]*)\\s+([^\\s:].*)");
  private static final Pattern VALUE =
      Pattern.compile("(\\s*(?:- )?[A-Za-z][A-Za-z-]*:\\s+)([^\\s\"'\\[{].*)");
  private static final Pattern QUOTED =
      Pattern.compile("(\\s*(?:- )?[A-Za-z][A-Za-z-]*:\\s+)\"(.*)\"\\s*");

  private final SourceText source;
  private final List<String> lines;
  private final int failedAt;

  /**
   * A text with one slip put right.
   *
   * @param line counted from 1, where the slip is
   */
  record Mended(SourceText text, int line, String advice) {}

  private SyntaxRepair(SourceText source, int failedAt) {
    this.source = source;
    this.lines = List.of(source.text().split("\n", -1));
    this.failedAt = failedAt;
  }

  /**
   * @param failedAt the line, counted from 1, at which the parser stopped
   * @param near the line that it complained about
   */
  static Optional<Mended> of(SourceText source, int failedAt, int near) {
    if (source.isJson() || source.text().length() > LONGEST_TEXT) {
      return Optional.empty();
    }
    SyntaxRepair repair = new SyntaxRepair(source, failedAt);
    Optional<Mended> tabs = repair.withoutTabs();
    if (tabs.isPresent()) {
      return tabs;
    }
    Optional<Mended> further = Optional.empty();
    for (int line : repair.near(near)) {
      for (Mended each : repair.candidates(line)) {
        int stops = TreeReader.stopsAt(each.text());
        if (stops == 0) {
          return Optional.of(each);
        }
        if (stops > failedAt && further.isEmpty()) {
          further = Optional.of(each);
        }
      }
    }
    return further;
  }

  private List<Integer> near(int near) {
    List<Integer> order = new ArrayList<>();
    for (int line : new int[] {near, failedAt, failedAt - 1, near - 1, near + 1}) {
      if (line >= 1 && line <= lines.size() && !order.contains(line)) {
        order.add(line);
      }
    }
    return order;
  }

  private Optional<Mended> withoutTabs() {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).matches(" *\t.*")) {
        String text = source.text().replace("\t", "  ");
        int line = i + 1;
        return Optional.of(new Mended(with(text), line, ProblemPhrases.say("maybe.tabs")));
      }
    }
    return Optional.empty();
  }

  private List<Mended> candidates(int line) {
    String written = lines.get(line - 1);
    List<Mended> all = new ArrayList<>();
    for (String mended : slips(written)) {
      String advice = ProblemPhrases.say("maybe.line", "line", mended.strip());
      all.add(new Mended(replaced(line, mended), line, advice));
    }
    for (int indent : indents(line)) {
      String mended = " ".repeat(indent) + written.strip();
      String advice =
          indent == 0
              ? ProblemPhrases.say("maybe.no-indent")
              : ProblemPhrases.say("maybe.indent", "indent", String.valueOf(indent));
      all.add(new Mended(replaced(line, mended), line, advice));
    }
    return all;
  }

  private static List<String> slips(String written) {
    List<String> all = new ArrayList<>();
    Matcher equals = EQUALS.matcher(written);
    if (equals.matches()) {
      all.add(equals.group(1) + equals.group(2) + ": " + equals.group(3));
    }
    Matcher glued = GLUED.matcher(written);
    if (glued.matches()) {
      all.add(glued.group(1) + ": " + glued.group(2));
    }
    Matcher quoted = QUOTED.matcher(written);
    if (quoted.matches() && quoted.group(2).contains("\"")) {
      all.add(quoted.group(1) + quoted.group(2));
    }
    Matcher value = VALUE.matcher(written);
    if (value.matches()) {
      String inside = value.group(2).strip().replace("\\", "\\\\").replace("\"", "\\\"");
      all.add(value.group(1) + '"' + inside + '"');
    }
    for (String end : List.of("\"", "'", "]", "}", " }]", " } ]")) {
      all.add(written.stripTrailing() + end);
    }
    Matcher bare = NO_COLON.matcher(written);
    if (bare.matches()) {
      all.add(bare.group(1) + bare.group(2) + ": " + bare.group(3));
    }
    all.add(written.replaceAll(":\\s+(#\\w+)", ": \"$1\""));
    if (written.matches("\\s*[A-Za-z][A-Za-z-]*\\s*")) {
      all.add(written.stripTrailing() + ":");
    }
    all.add(written.replaceAll(";\\s*", ", "));
    all.add(written.replaceAll(",\\s*,", ","));
    all.add(written.replaceFirst("[\\]}]\\s*$", ""));
    all.removeIf(written::equals);
    return all;
  }

  /** How far the lines around it are moved in. */
  private List<Integer> indents(int line) {
    List<Integer> all = new ArrayList<>();
    int own = indent(lines.get(line - 1));
    for (int i = line - 2; i >= 0 && all.size() < 2; i--) {
      String above = lines.get(i);
      if (!above.isBlank() && !above.strip().startsWith("#") && !all.contains(indent(above))) {
        all.add(indent(above));
      }
    }
    if (line > 1) {
      all.add(indent(lines.get(line - 2)) + 2);
    }
    all.removeIf(each -> each == own);
    return all;
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  private SourceText replaced(int line, String mended) {
    List<String> all = new ArrayList<>(lines);
    all.set(line - 1, mended);
    return with(String.join("\n", all));
  }

  private SourceText with(String text) {
    return new SourceText(source.name(), source.firstLine(), text, source.folder());
  }
}
