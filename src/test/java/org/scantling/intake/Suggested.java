package org.scantling.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Does to a file what a problem suggests, as its reader would, knowing nothing but the sentence.
 */
final class Suggested {
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final Pattern LINE = Pattern.compile("Maybe `(.*)`\\?");
  private static final Pattern INDENT =
      Pattern.compile("Maybe (no|\\d+) spaces? at the start of the line\\?");
  private static final Pattern UNDER = Pattern.compile("Maybe ([a-z-]+) under ([a-z, -]+)\\?");
  private static final Pattern MARGIN = Pattern.compile("Maybe ([a-z-]+) at the margin\\?");
  private static final Pattern MAYBE = Pattern.compile("Maybe (.*)\\?");

  private Suggested() {}

  /** True where a problem is about the line as a whole. */
  static boolean isOfALine(Problem problem) {
    return problem.field().equals(SourceFile.whole()) || problem.advice().contains("each colon");
  }

  static String line(String text, Problem problem) {
    String advice = problem.advice();
    if (advice.contains("two spaces for each tab")) {
      return text.replace("\t", "  ");
    }
    if (advice.contains("a space after each colon")) {
      return text.replaceAll("([a-z-]+):(?=[^\\s])", "$1: ");
    }
    String[] lines = text.split("\n", -1);
    int at = problem.line().orElseThrow() - 1;
    String written = lines[at];
    String indent = written.substring(0, written.length() - written.stripLeading().length());
    Matcher line = LINE.matcher(advice);
    Matcher spaces = INDENT.matcher(advice);
    if (line.matches()) {
      lines[at] = indent + line.group(1);
    } else if (spaces.matches()) {
      int many = spaces.group(1).equals("no") ? 0 : Integer.parseInt(spaces.group(1));
      lines[at] = " ".repeat(many) + written.strip();
    } else {
      throw new AssertionError("no suggestion in: " + problem.text());
    }
    return String.join("\n", lines);
  }

  /** Everything that may be put in place of a value. */
  static List<String> values(Problem problem) {
    Matcher maybe = MAYBE.matcher(problem.advice());
    return maybe.matches() && !isOfALine(problem) && !isOfAKey(problem)
        ? List.of(maybe.group(1).split(", (?!.*})| or "))
        : List.of();
  }

  private static boolean isOfAKey(Problem problem) {
    return problem.found().startsWith("key ")
        || problem.accepted().equals("a group of keys")
        || problem.advice().contains("leave it out")
        || problem.advice().contains("in quotes");
  }

  static String applied(String text, List<Problem> problems) {
    JsonNode tree = YAML.readTree(text);
    for (Problem problem : problems) {
      apply((ObjectNode) tree, problem, values(problem).stream().findFirst().orElse(""));
    }
    return YAML.writeValueAsString(tree);
  }

  static String applied(String text, Problem problem, String value) {
    JsonNode tree = YAML.readTree(text);
    apply((ObjectNode) tree, problem, value);
    return YAML.writeValueAsString(tree);
  }

  private static void apply(ObjectNode tree, Problem problem, String value) {
    String advice = problem.advice();
    List<String> path = steps(problem.field());
    JsonNode group = at(tree, path.subList(0, path.size() - 1));
    String last = path.get(path.size() - 1);
    Matcher under = UNDER.matcher(advice);
    Matcher margin = MARGIN.matcher(advice);
    Matcher maybe = MAYBE.matcher(advice);
    if (advice.contains("Maybe leave it out?")) {
      ((ObjectNode) group).remove(last);
    } else if (advice.contains("in quotes")) {
      ((ObjectNode) group).put(last, group.get(last).asString());
    } else if (under.matches()) {
      move(tree, group, last, List.of(under.group(2).split(", ")), under.group(1));
    } else if (margin.matches()) {
      move(tree, group, last, List.of(), margin.group(1));
    } else if (isOfAKey(problem) && maybe.matches()) {
      JsonNode held = ((ObjectNode) group).remove(last);
      ((ObjectNode) group).set(maybe.group(1), held);
    } else if (!value.isEmpty()) {
      replace(tree, path, value);
    }
  }

  private static void move(
      ObjectNode tree, JsonNode from, String key, List<String> groups, String name) {
    JsonNode held = ((ObjectNode) from).remove(key);
    ObjectNode into = tree;
    for (String group : groups) {
      into = into.get(group) instanceof ObjectNode there ? there : into.putObject(group);
    }
    into.set(name, held);
  }

  /** A word where a list or a group could stand is replaced where it stands. */
  private static void replace(ObjectNode tree, List<String> path, String value) {
    JsonNode parent = tree;
    for (int i = 0; i < path.size(); i++) {
      JsonNode below = child(parent, path.get(i));
      boolean last = i == path.size() - 1 || !below.isContainer();
      if (last) {
        JsonNode put = YAML.readTree(value);
        boolean asTyped = put.isContainer() || put.isNumber() || value.startsWith("\"");
        JsonNode written = asTyped ? put : StringNode.valueOf(value);
        if (parent instanceof ArrayNode list) {
          list.set(Integer.parseInt(path.get(i)), written);
        } else {
          ((ObjectNode) parent).set(path.get(i), written);
        }
        return;
      }
      parent = below;
    }
  }

  private static JsonNode at(JsonNode tree, List<String> path) {
    JsonNode node = tree;
    for (String step : path) {
      JsonNode below = child(node, step);
      node = below == null || !below.isContainer() ? node : below;
    }
    return node;
  }

  private static JsonNode child(JsonNode node, String step) {
    return node instanceof ArrayNode list && step.matches("\\d+")
        ? list.get(Integer.parseInt(step))
        : node.get(step);
  }

  private static List<String> steps(String path) {
    List<String> steps = new ArrayList<>();
    for (String step : path.split("[.\\[\\]]+")) {
      steps.add(step);
    }
    return steps;
  }
}
