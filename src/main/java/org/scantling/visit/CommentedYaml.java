package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;

/** YAML in blocks, a line a key, with comments beside or above. */
final class CommentedYaml {
  private static final int WIDTH = 80;
  private static final int BESIDE = 36;
  private static final String STEP = "  ";

  private final List<String> lines = new ArrayList<>();
  private final List<String> open = new ArrayList<>();

  void comment(String text) {
    String indent = text.substring(0, text.length() - text.stripLeading().length());
    StringBuilder line = new StringBuilder("#");
    String start = "# " + indent;
    line.append(' ').append(indent);
    int bare = line.length();
    for (String word : text.strip().split(" ")) {
      if (line.length() > bare && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(start).append(STEP);
        bare = line.length();
      }
      line.append(line.length() > bare ? " " : "").append(word);
    }
    lines.add(line.toString().stripTrailing());
  }

  void blank() {
    lines.add("");
  }

  /**
   * A key with its value; the groups that it lies in are opened as they come.
   *
   * @param key its path
   */
  void put(String key, String value, String comment) {
    List<String> steps = List.of(key.split("\\."));
    List<String> groups = steps.subList(0, steps.size() - 1);
    int same = 0;
    while (same < Math.min(open.size(), groups.size()) && open.get(same).equals(groups.get(same))) {
      same++;
    }
    open.subList(same, open.size()).clear();
    for (String group : groups.subList(same, groups.size())) {
      lines.add(STEP.repeat(open.size()) + group + ":");
      open.add(group);
    }
    String indent = STEP.repeat(groups.size());
    add(indent, indent + steps.get(steps.size() - 1) + ": " + value, comment);
  }

  /** A list, a line an item. */
  void putItems(String key, List<String> items) {
    put(key, "", "");
    int last = lines.size() - 1;
    lines.set(last, lines.get(last).stripTrailing());
    String indent = STEP.repeat(key.split("\\.").length);
    items.forEach(item -> lines.add(indent + "- " + item));
  }

  private void add(String indent, String line, String comment) {
    int gap = Math.max(BESIDE - line.length(), 2);
    String beside = line + " ".repeat(gap) + "# " + comment;
    if (comment.isEmpty()) {
      lines.add(line);
    } else if (beside.length() <= WIDTH) {
      lines.add(beside);
    } else {
      lines.add(indent + "# " + comment);
      lines.add(line);
    }
  }

  String text() {
    return String.join("\n", lines) + "\n";
  }
}
