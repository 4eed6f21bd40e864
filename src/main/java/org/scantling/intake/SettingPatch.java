package org.scantling.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the value of a {@code --set} option into the nodes of a file, before they are checked. */
final class SettingPatch {
  private static final Pattern STEP = Pattern.compile("([^\\[\\].]+)|\\[(\\d{1,3})]");
  private static final Pattern PATH =
      Pattern.compile("[^\\[\\].]+(?:\\[\\d{1,3}])*(?:\\.[^\\[\\].]+(?:\\[\\d{1,3}])*){0,9}");

  private static final String YAML = "option.yaml";

  private final Setting setting;
  private final Origin origin;
  private final Problems problems;

  private SettingPatch(Setting setting, Origin origin, Problems problems) {
    this.setting = setting;
    this.origin = origin;
    this.problems = problems;
  }

  /** True where a path leads to a key of a file. */
  static boolean isPath(String path) {
    return PATH.matcher(path).matches();
  }

  /**
   * The file with one more value in it, which stands at a place of its own.
   *
   * @param value the value as it was read; empty where it is still a text to be read
   */
  static Node.Group put(
      Node.Group file, Setting setting, Optional<Node> value, Origin origin, Problems problems) {
    SettingPatch patch = new SettingPatch(setting, origin, problems);
    return (Node.Group) patch.put(file, steps(setting.path()), value.orElseGet(patch::value));
  }

  /** The file with all settings in it, later ones over earlier ones. */
  static Node.Group apply(Node.Group file, List<Setting> settings, Problems problems) {
    Node.Group patched = file;
    for (Setting setting : settings) {
      Origin option = Origin.whole(setting.name());
      patched = new SettingPatch(setting, option, problems).apply(patched);
    }
    return patched;
  }

  private Node.Group apply(Node.Group file) {
    if (!isPath(setting.path())) {
      problems.add(
          origin.problem(
              "path",
              ProblemPhrases.shortened(setting.path()),
              ProblemPhrases.say("accepted.path")));
      return file;
    }
    return (Node.Group) put(file, steps(setting.path()), value());
  }

  private static List<String> steps(String path) {
    List<String> steps = new ArrayList<>();
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      steps.add(step.group());
    }
    return steps;
  }

  private Node put(Node into, List<String> steps, Node value) {
    if (steps.isEmpty()) {
      return value;
    }
    String step = steps.get(0);
    List<String> rest = steps.subList(1, steps.size());
    return step.startsWith("[")
        ? putItem(into, Integer.parseInt(step.substring(1, step.length() - 1)), rest, value)
        : putKey(into, step, rest, value);
  }

  private Node putKey(Node into, String key, List<String> rest, Node value) {
    Map<String, Node.Member> members =
        into instanceof Node.Group group
            ? new LinkedHashMap<>(group.members())
            : new LinkedHashMap<>();
    Node.Member old = members.get(key);
    Node below = put(old == null ? nothing() : old.value(), rest, value);
    members.put(key, new Node.Member(old == null ? origin : old.key(), below));
    return new Node.Group(into instanceof Node.Group ? into.origin() : origin, members);
  }

  private Node putItem(Node into, int place, List<String> rest, Node value) {
    List<Node> items =
        into instanceof Node.Items list ? new ArrayList<>(list.items()) : new ArrayList<>();
    if (place > items.size()) {
      problems.add(
          origin.problem(
              setting.path(),
              ProblemPhrases.say(
                  "found.place", "place", at(place), "size", String.valueOf(items.size())),
              ProblemPhrases.say("accepted.range", "least", at(0), "most", at(items.size()))));
      return into;
    }
    if (place == items.size()) {
      items.add(nothing());
    }
    items.set(place, put(items.get(place), rest, value));
    return new Node.Items(into instanceof Node.Items ? into.origin() : origin, items);
  }

  private static String at(int place) {
    return "[" + place + "]";
  }

  private Node value() {
    if (setting.value().isBlank()) {
      return nothing();
    }
    Problems own = new Problems();
    try {
      Node node = TreeReader.read(new SourceText(YAML, 1, setting.value(), Path.of("")), own);
      own.throwIfAny();
      return moved(node);
    } catch (IntakeException refused) {
      refused.problems().forEach(this::passOn);
      throw new IntakeException(problems.all());
    }
  }

  private void passOn(Problem problem) {
    problems.add(
        origin
            .problem(setting.path(), problem.found(), problem.accepted())
            .withAdvice(problem.advice()));
  }

  /** The same node without a line: an option has none. */
  private Node moved(Node node) {
    if (node instanceof Node.Group group) {
      Map<String, Node.Member> members = new LinkedHashMap<>();
      group.members().forEach((k, v) -> members.put(k, new Node.Member(origin, moved(v.value()))));
      return new Node.Group(origin, members);
    }
    if (node instanceof Node.Items list) {
      return new Node.Items(origin, list.items().stream().map(this::moved).toList());
    }
    Node.Scalar value = (Node.Scalar) node;
    return new Node.Scalar(origin, value.text(), value.form());
  }

  private Node nothing() {
    return new Node.Scalar(new Origin(origin.file(), OptionalInt.empty()), "", Node.Form.EMPTY);
  }
}
