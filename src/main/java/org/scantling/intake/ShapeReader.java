package org.scantling.intake;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Holds a file against its shape record: unknown keys, missing keys, wrong forms, wrong values. */
final class ShapeReader {
  private static final int MOST_ITEMS = 100;

  private final Problems problems;
  private final Readings readings = new Readings();
  private final LeafReader leaves;

  ShapeReader(Vocabulary vocabulary, Problems problems) {
    this.problems = problems;
    this.leaves = new LeafReader(vocabulary, problems, readings);
  }

  Readings read(Class<?> shape, Node.Group file) {
    group(shape, file, "");
    return readings;
  }

  private void group(Class<?> shape, Node.Group group, String path) {
    List<ShapeKeys.Key> keys = ShapeKeys.keys(shape);
    List<String> known = keys.stream().map(ShapeKeys.Key::key).toList();
    group.members().forEach((name, member) -> unknown(name, member, path, known));
    for (ShapeKeys.Key key : keys) {
      String below = path + key.key();
      Node.Member member = group.members().get(key.key());
      if (member == null) {
        absent(key, below, group.origin());
      } else {
        value(key, member.value(), below);
      }
    }
  }

  private void unknown(String name, Node.Member member, String path, List<String> known) {
    if (known.contains(name)) {
      return;
    }
    String shown = ProblemPhrases.shortened(name);
    problems.add(
        member
            .key()
            .problem(path + shown, "key " + shown + " (unknown)", ProblemPhrases.oneOf(known))
            .withAdvice(problems.areMany() ? "" : NearMiss.advice(name, known)));
  }

  private void absent(ShapeKeys.Key key, String path, Origin parent) {
    if (key.entry().exception()) {
      return;
    }
    if (key.entry().required()) {
      problems.add(parent.problem(path, Problem.MISSING + key.entry().says() + ")", accepted(key)));
    } else if (isGroupOfChoices(key)) {
      ShapeKeys.keys(key.type()).forEach(below -> absent(below, path + "." + below.key(), parent));
    } else {
      readings.putAbsent(path);
    }
  }

  /** Whether leaving out the group means no more than leaving out each of its keys. */
  private static boolean isGroupOfChoices(ShapeKeys.Key key) {
    return key.isGroup()
        && !key.list()
        && ShapeKeys.keys(key.type()).stream().noneMatch(below -> below.entry().required());
  }

  private void value(ShapeKeys.Key key, Node node, String path) {
    if (!key.list()) {
      single(key, node, path);
    } else if (node instanceof Node.Items list && list.items().size() <= MOST_ITEMS) {
      readings.putSize(path, list.items().size());
      for (int i = 0; i < list.items().size(); i++) {
        single(key, list.items().get(i), path + "[" + i + "]");
      }
    } else {
      String advice = node instanceof Node.Scalar one ? inBrackets("[ %s ]", one) : "";
      problems.add(node.origin().problem(path, node.words(), accepted(key)).withAdvice(advice));
    }
  }

  private static String inBrackets(String form, Node.Scalar word) {
    boolean plain = word.form() == Node.Form.TEXT && word.text().matches("[\\w .'-]{1,60}");
    return plain ? "Maybe " + String.format(Locale.ROOT, form, word.text()) + "?" : "";
  }

  private void single(ShapeKeys.Key key, Node node, String path) {
    if (!key.isGroup()) {
      leaves.read(key, node, path);
    } else if (node instanceof Node.Group group) {
      group(key.type(), group, path + ".");
    } else if (node instanceof Node.Scalar word
        && word.form() == Node.Form.TEXT
        && !leaves.words(key).isEmpty()) {
      wordInsteadOfGroup(key, word, path);
    } else {
      List<ShapeKeys.Key> keys = ShapeKeys.keys(key.type());
      String advice =
          keys.size() == 1 && node instanceof Node.Scalar one
              ? inBrackets("{ " + keys.get(0).key() + ": %s }", one)
              : "";
      problems.add(node.origin().problem(path, node.words(), acceptedItem(key)).withAdvice(advice));
    }
  }

  private void wordInsteadOfGroup(ShapeKeys.Key key, Node.Scalar word, String path) {
    Collection<String> words = leaves.words(key);
    if (words.contains(word.text())) {
      readings.putWord(path, word.text());
      return;
    }
    problems.add(
        word.origin()
            .problem(path, word.words(), acceptedItem(key))
            .withAdvice(NearMiss.advice(word.text(), words)));
  }

  private String accepted(ShapeKeys.Key key) {
    return key.list()
        ? "a list of up to " + MOST_ITEMS + " items, each " + acceptedItem(key)
        : acceptedItem(key);
  }

  private String acceptedItem(ShapeKeys.Key key) {
    if (!key.isGroup()) {
      return leaves.accepted(key);
    }
    String keys =
        ShapeKeys.keys(key.type()).stream()
            .map(ShapeKeys.Key::key)
            .collect(Collectors.joining(", "));
    String group = "a group of keys (" + keys + ")";
    Collection<String> words = leaves.words(key);
    return words.isEmpty() ? group : ProblemPhrases.oneOf(words) + ", or " + group;
  }
}
