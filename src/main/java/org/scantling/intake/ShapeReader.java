package org.scantling.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Holds a file against its shape record: unknown keys, missing keys, wrong forms, wrong values. */
final class ShapeReader {
  private static final int MOST_ITEMS = 100;

  /** Of bays told one by one; equal bays may be as many as they like. */
  private static final int MOST_BAYS = 16;

  /** Of files, each of which is worked through from end to end. */
  private static final int MOST_PATHS = 6;

  private static final Pattern GLUED = Pattern.compile("([a-z-]+)[:=].*");

  private final Problems problems;
  private final Readings readings = new Readings();
  private final TradeWords trade;
  private final LeafReader leaves;
  private Class<?> root = SiteFile.class;

  ShapeReader(Vocabulary vocabulary, Problems problems) {
    this.problems = problems;
    this.trade = vocabulary.trade();
    this.leaves = new LeafReader(vocabulary, problems, readings);
  }

  /** The file with its keys where they belong, as far as that can be told. */
  Node.Group repaired(Class<?> shape, Node.Group file) {
    return KeyRepair.apply(file, shape, trade, problems);
  }

  Readings read(Class<?> shape, Node.Group file) {
    root = shape;
    leaves.windIs(ClimateRule.basis(file));
    group(shape, file, "");
    return readings;
  }

  private void group(Class<?> shape, Node.Group group, String path) {
    List<ShapeKeys.Key> keys = ShapeKeys.keys(shape);
    List<String> known = keys.stream().map(ShapeKeys.Key::key).toList();
    group.members().forEach((name, member) -> unknown(name, member, path, known));
    List<String> glued =
        group.members().keySet().stream().flatMap(name -> glued(name).stream()).toList();
    for (ShapeKeys.Key key : keys) {
      String below = path + key.key();
      Node.Member member = group.members().get(key.key());
      if (member == null && glued.contains(key.key())) {
        continue;
      }
      if (member == null && !ListedBays.makeNeedless(below, group)) {
        absent(key, below, group.origin());
      } else if (member != null) {
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
            .problem(
                path + shown,
                ProblemPhrases.say("found.key-unknown", "key", shown),
                ProblemPhrases.oneOf(known))
            .withAdvice(problems.areMany() ? "" : advice(name, known)));
  }

  /** The key of a key and value that stand together without a space. */
  private static Optional<String> glued(String name) {
    Matcher together = GLUED.matcher(name);
    return together.matches() ? Optional.of(together.group(1)) : Optional.empty();
  }

  private static String advice(String name, List<String> known) {
    if (glued(name).filter(known::contains).isPresent()) {
      return ProblemPhrases.say("maybe.space");
    }
    return known.size() == 1 ? ProblemPhrases.maybe(known) : NearMiss.advice(name, known);
  }

  private void absent(ShapeKeys.Key key, String path, Origin parent) {
    if (key.entry().exception()) {
      return;
    }
    if (key.entry().required()) {
      problems.add(parent.lacking(path, KeyWords.of(root, path), accepted(key)));
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
    Optional<Node.Items> listed =
        key.entry().kind() == EntryKind.BAYS ? ListedBays.each(node) : Optional.empty();
    if (listed.isPresent()) {
      bays(listed.get(), path);
    } else if (key.entry().kind() == EntryKind.PATHS && node instanceof Node.Items paths) {
      paths(key, paths, path);
    } else if (!key.list()) {
      single(key, node, path);
    } else if (entries(node) instanceof Node.Items list && list.items().size() <= MOST_ITEMS) {
      readings.putSize(path, list.items().size());
      for (int i = 0; i < list.items().size(); i++) {
        single(key, list.items().get(i), path + "[" + i + "]");
      }
    } else {
      problems.add(node.origin().problem(path, node.words(), accepted(key)));
    }
  }

  /** Bays by the length of each. */
  private void bays(Node.Items each, String path) {
    int count = few(each, path, "listed-bays", MOST_BAYS);
    for (int bay = 0; bay < count; bay++) {
      leaves.bay(each.items().get(bay), path + "[" + bay + "]");
    }
  }

  /** Files by the path of each. */
  private void paths(ShapeKeys.Key key, Node.Items each, String path) {
    int count = few(each, path, "listed-paths", MOST_PATHS);
    for (int place = 0; place < count; place++) {
      leaves.read(key, each.items().get(place), path + "[" + place + "]");
    }
  }

  /** How many there are; none where they are refused. */
  private int few(Node.Items each, String path, String what, int most) {
    int count = each.items().size();
    if (count > 0 && count <= most) {
      readings.putSize(path, count);
      return count;
    }
    problems.add(
        each.origin()
            .problem(
                path,
                ProblemPhrases.say("found." + what, "count", String.valueOf(count)),
                ProblemPhrases.say("accepted." + what, "most", String.valueOf(most))));
    return 0;
  }

  /** One entry without brackets is a list of one, and words with commas are several. */
  private static Node entries(Node node) {
    if (node instanceof Node.Group group && !group.members().isEmpty()) {
      return new Node.Items(group.origin(), List.of(group));
    }
    if (!(node instanceof Node.Scalar words) || words.form() != Node.Form.TEXT) {
      return node;
    }
    List<Node> items = new ArrayList<>();
    for (String word : words.text().split(",|\\band\\b", -1)) {
      items.add(new Node.Scalar(words.origin(), word.strip(), Node.Form.TEXT));
    }
    return new Node.Items(words.origin(), items);
  }

  private void single(ShapeKeys.Key key, Node node, String path) {
    if (!key.isGroup()) {
      leaves.read(key, node, path);
    } else if (node instanceof Node.Group group) {
      group(key.type(), group, path + ".");
    } else if (node instanceof Node.Scalar word && !leaves.words(key).isEmpty()) {
      wordInsteadOfGroup(key, word, path);
    } else {
      valueInsteadOfGroup(key, node, path);
    }
  }

  /** A group of one key is clear without its key. */
  private void valueInsteadOfGroup(ShapeKeys.Key key, Node node, String path) {
    List<ShapeKeys.Key> keys = ShapeKeys.keys(key.type());
    if (keys.size() == 1 && node instanceof Node.Scalar) {
      leaves.read(keys.get(0), node, path + "." + keys.get(0).key());
      return;
    }
    problems.add(
        node.origin()
            .problem(path, node.words(), acceptedItem(key))
            .withAdvice(node instanceof Node.Scalar one ? asKey(keys, one, path) : ""));
  }

  /** The key of the group that alone could take the value. */
  private String asKey(List<ShapeKeys.Key> keys, Node.Scalar value, String path) {
    boolean glued =
        keys.stream().anyMatch(key -> value.text().matches("(?s).*\\b" + key.key() + "[:=]\\S.*"));
    if (glued) {
      return ProblemPhrases.say("maybe.space");
    }
    List<String> taking =
        keys.stream()
            .filter(key -> !key.isGroup() && !key.list())
            .filter(key -> key.entry().kind() != EntryKind.TEXT)
            .filter(key -> leaves.takes(key, value, path + "." + key.key()))
            .map(key -> "{ " + key.key() + ": " + value.text() + " }")
            .toList();
    return taking.size() == 1 ? ProblemPhrases.maybe(taking) : "";
  }

  private void wordInsteadOfGroup(ShapeKeys.Key key, Node.Scalar word, String path) {
    if (word.form() == Node.Form.TEXT && leaves.words(key).contains(word.text())) {
      // Nothing is wrong, so nothing is looked for that could be meant.
      leaves.word(key, word, path, () -> acceptedItem(key));
      return;
    }
    List<ShapeKeys.Key> keys = ShapeKeys.keys(key.type());
    String one = asKey(keys, word, path);
    if (word.form() == Node.Form.EMPTY || word.form() == Node.Form.NUMBER || !one.isEmpty()) {
      problems.add(word.origin().problem(path, word.words(), acceptedItem(key)).withAdvice(one));
    } else {
      leaves.word(key, word, path, () -> acceptedItem(key));
    }
  }

  private String accepted(ShapeKeys.Key key) {
    return key.list()
        ? ProblemPhrases.say(
            "accepted.list", "most", String.valueOf(MOST_ITEMS), "item", acceptedItem(key))
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
    Collection<String> words = leaves.words(key);
    return words.isEmpty()
        ? ProblemPhrases.say("accepted.group", "keys", keys)
        : ProblemPhrases.say(
            "accepted.word-or-group", "words", ProblemPhrases.oneOf(words), "keys", keys);
  }
}
