package org.scantling.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.scantling.tables.CsvLine;

/**
 * Reads sites that stand one on a line: as JSON objects, or as a table whose heading names the keys
 * with points between them, {@code walkway.length}. Safe to share between threads.
 */
public final class SiteLines {
  private static final String ID = "id";
  private static final String BASE = "base";

  /** A number as JSON writes it. */
  private static final Pattern NUMBER =
      Pattern.compile("-?(?:0|[1-9]\\d*)(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");

  /** What holds text however it looks. */
  private static final List<String> TEXTS = List.of("title", BASE);

  private final String name;
  private final Path folder;
  private final List<String> bases;
  private final List<String> columns;

  private SiteLines(String name, Path folder, List<String> bases, List<String> columns) {
    this.name = name;
    this.folder = folder;
    this.bases = List.copyOf(bases);
    this.columns = List.copyOf(columns);
  }

  /**
   * Of JSON objects.
   *
   * @param name the file as the user named it
   * @param folder from where a relative {@code base:} is looked up
   * @param bases the base designs of a site that names none
   */
  public static SiteLines json(String name, Path folder, List<String> bases) {
    return new SiteLines(name, folder, bases, List.of());
  }

  /**
   * Of a table.
   *
   * @param number the line of its heading
   * @throws IntakeException where a column has no name of a key, or one that another has
   */
  public static SiteLines csv(
      String name, Path folder, List<String> bases, int number, String heading) {
    Problems problems = new Problems();
    Origin origin = Origin.line(name, number);
    List<String> columns = cells(heading, origin, problems);
    for (int i = 0; i < columns.size(); i++) {
      boolean again = columns.indexOf(columns.get(i)) < i;
      if (again || !SettingPatch.isPath(columns.get(i))) {
        String found =
            again
                ? ProblemPhrases.say("found.column-twice", "column", columns.get(i))
                : ProblemPhrases.say("found.column", "column", columns.get(i));
        problems.add(
            origin.problem(
                ProblemPhrases.say("heading"),
                ProblemPhrases.shortened(found),
                ProblemPhrases.say("accepted.column")));
      }
    }
    problems.throwIfAny();
    return new SiteLines(name, folder, bases, columns);
  }

  /** True where a first line is the heading of a table: it names a key of a site file. */
  public static boolean isHeading(String line) {
    if (line.stripLeading().startsWith("{")) {
      return false;
    }
    return CsvLine.cells(line).orElse(List.of()).stream()
        .anyMatch(each -> each.startsWith("walkway.") || each.equals("title"));
  }

  /** The site on a line, with whatever is wrong with it. */
  public SiteLine read(int number, String text) {
    Problems problems = new Problems();
    Origin origin = Origin.line(name, number);
    try {
      return line(
          number,
          columns.isEmpty() ? object(number, text, problems) : row(text, origin, problems),
          problems);
    } catch (IntakeException fatal) {
      Problems all = new Problems();
      all.addAll(fatal.problems());
      return without(number, all);
    }
  }

  /** A line that could not be taken in at all. */
  public SiteLine unread(int number, String found, String accepted) {
    Problems problems = new Problems();
    Origin origin = Origin.line(name, number);
    problems.add(origin.problem(ProblemPhrases.say("whole-line"), found, accepted));
    return without(number, problems);
  }

  private SiteLine without(int number, Problems problems) {
    Node.Group nothing = new Node.Group(Origin.line(name, number), Map.of());
    return new SiteLine(name, number, folder, nothing, Optional.empty(), problems);
  }

  private SiteLine line(int number, Node.Group all, Problems problems) {
    Map<String, Node.Member> members = new LinkedHashMap<>(all.members());
    Optional<Node.Scalar> id = Optional.empty();
    if (all.at(ID) instanceof Node.Scalar called && called.form() != Node.Form.EMPTY) {
      members.remove(ID);
      id = Optional.of(called);
    }
    if (!members.containsKey(BASE) && !bases.isEmpty()) {
      members.put(BASE, new Node.Member(all.origin(), usual(all.origin())));
    }
    return new SiteLine(name, number, folder, new Node.Group(all.origin(), members), id, problems);
  }

  private Node usual(Origin origin) {
    List<Node> each = new ArrayList<>();
    bases.forEach(base -> each.add(new Node.Scalar(origin, base, Node.Form.TEXT)));
    return each.size() == 1 ? each.get(0) : new Node.Items(origin, each);
  }

  private Node.Group object(int number, String text, Problems problems) {
    if (!text.stripLeading().startsWith("{")) {
      throw problems.fatal(
          Origin.line(name, number)
              .problem(
                  ProblemPhrases.say("whole-line"),
                  ProblemPhrases.shortened(text),
                  ProblemPhrases.say("accepted.object")));
    }
    return TreeReader.readGroup(new SourceText(name, number, text, folder), problems);
  }

  private Node.Group row(String text, Origin origin, Problems problems) {
    List<String> cells = cells(text, origin, problems);
    if (cells.size() != columns.size()) {
      throw problems.fatal(
          origin.problem(
              ProblemPhrases.say("whole-line"),
              ProblemPhrases.say("found.cells", "cells", String.valueOf(cells.size())),
              ProblemPhrases.say("accepted.cells", "cells", String.valueOf(columns.size()))));
    }
    Node.Group keys = new Node.Group(origin, new LinkedHashMap<>());
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        Setting setting = new Setting(columns.get(i), cells.get(i));
        keys = SettingPatch.put(keys, setting, plain(setting, origin), origin, problems);
      }
    }
    return keys;
  }

  /** A cell as it stands, unless it holds a list or a group. */
  private static Optional<Node> plain(Setting setting, Origin origin) {
    String cell = setting.value();
    if (cell.startsWith("[") || cell.startsWith("{")) {
      return Optional.empty();
    }
    boolean number = NUMBER.matcher(cell).matches() && !TEXTS.contains(setting.path());
    Node.Form form = number ? Node.Form.NUMBER : Node.Form.TEXT;
    return Optional.of(new Node.Scalar(origin, cell, form));
  }

  private static List<String> cells(String line, Origin origin, Problems problems) {
    Optional<List<String>> cells = CsvLine.cells(line);
    if (cells.isEmpty()) {
      throw problems.fatal(
          origin.problem(
              ProblemPhrases.say("whole-line"),
              ProblemPhrases.say("found.quote"),
              ProblemPhrases.say("accepted.quotes")));
    }
    return cells.get();
  }
}
