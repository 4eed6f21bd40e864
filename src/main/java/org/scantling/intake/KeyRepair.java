package org.scantling.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.scantling.tables.EdgeRow;
import org.scantling.tables.SynonymRow;

/**
 * Says where the keys probably belong that a file has in the wrong place or under a wrong name, and
 * reads on as if they stood there: so their values are looked at in the same go. What lies outside
 * the rules is told as such.
 */
final class KeyRepair {
  private static final Pattern GLUED = Pattern.compile("([A-Za-z-]+)[:=]\\s*(\\S.*)");

  private static final int DEEPEST = 4;

  private final KeyPlaces places;
  private final TradeWords trade;
  private final Problems problems;
  private final Map<String, Node.Member> moved = new LinkedHashMap<>();
  private Node.Group file;

  private KeyRepair(Node.Group file, KeyPlaces places, TradeWords trade, Problems problems) {
    this.file = file;
    this.places = places;
    this.trade = trade;
    this.problems = problems;
  }

  static Node.Group apply(Node.Group file, Class<?> shape, TradeWords trade, Problems problems) {
    KeyRepair repair = new KeyRepair(file, new KeyPlaces(shape, trade.synonyms()), trade, problems);
    for (int round = 0; round < DEEPEST; round++) {
      repair.moved.clear();
      repair.file = repair.moved(repair.kept(shape, repair.file, ""));
      if (repair.moved.isEmpty()) {
        break;
      }
    }
    return repair.file;
  }

  /** The file with everything where it belongs; a group that was moved is looked at once more. */
  private Node.Group moved(Node.Group kept) {
    Node.Group all = kept;
    for (Map.Entry<String, Node.Member> each : moved.entrySet()) {
      all = put(all, List.of(each.getKey().split("\\.")), each.getValue());
    }
    return all;
  }

  /** The group without the keys that belong elsewhere. */
  private Node.Group kept(Class<?> shape, Node.Group group, String above) {
    Map<String, Node.Member> members = new LinkedHashMap<>();
    Map<String, ShapeKeys.Key> keys = new LinkedHashMap<>();
    ShapeKeys.keys(shape).forEach(key -> keys.put(key.key(), key));
    group
        .members()
        .forEach(
            (name, member) -> {
              ShapeKeys.Key key = keys.get(name);
              if (key == null) {
                if (!problems.areMany() && told(above, name, member)) {
                  return;
                }
                members.put(name, member);
              } else if (key.isGroup() && member.value() instanceof Node.Group below) {
                Node.Group inner = kept(key.type(), below, above + name + ".");
                members.put(name, new Node.Member(member.key(), inner));
              } else if (key.isGroup() && !misplaced(above + name, member)) {
                members.put(name, member);
              } else if (!key.isGroup()) {
                members.put(name, member);
              }
            });
    return new Node.Group(group.origin(), members);
  }

  /** A single value under the name of a group that another key takes, such as snow: 30 psf. */
  private boolean misplaced(String path, Node.Member member) {
    String name = KeyPlaces.last(path);
    String above = path.substring(0, path.length() - name.length());
    if (!(member.value() instanceof Node.Scalar one)
        || one.form() == Node.Form.EMPTY
        || one.text().equals("none")) {
      return false;
    }
    Optional<String> meant =
        trade.synonyms().key(name).isEmpty()
            ? Optional.empty()
            : places.meant(above, name, one).filter(target -> !target.equals(path));
    meant.ifPresent(
        target ->
            moves(
                above,
                target,
                member,
                member
                    .value()
                    .origin()
                    .problem(
                        path, name + ": " + one.words(), ProblemPhrases.say("accepted.keys"))));
    return meant.isPresent();
  }

  /** True where the key has been told of and is not to be looked at again. */
  private boolean told(String above, String name, Node.Member member) {
    String value = member.value() instanceof Node.Scalar one ? one.text() : "";
    Optional<EdgeRow> edge = trade.edges().ofKey(above + name, name, value);
    Optional<String> meant = places.meant(above, name, member.value());
    if (edge.isPresent()) {
      String found = name + (value.isEmpty() ? "" : ": " + value);
      problems.add(member.key().outside(above + name, ProblemPhrases.shortened(found), edge.get()));
      return true;
    }
    if (meant.isEmpty() && trade.edges().denied(above + name, name, value)) {
      problems.add(unknown(above, name, member).withAdvice(ProblemPhrases.say("maybe.nothing")));
      return true;
    }
    Matcher glued = GLUED.matcher(name);
    if (meant.isEmpty() && value.isEmpty() && glued.matches()) {
      return unglued(above, member, glued);
    }
    meant.ifPresent(target -> moves(above, target, member, unknown(above, name, member)));
    Optional<String> says = trade.synonyms().key(name).flatMap(SynonymRow::says);
    if (meant.isEmpty() && says.isPresent()) {
      problems.add(unknown(above, name, member).withAdvice(says.get()));
      return true;
    }
    return meant.isPresent();
  }

  /** {@code vine:wisteria} in braces is one long key to the parser. */
  private boolean unglued(String above, Node.Member member, Matcher glued) {
    String key = glued.group(1);
    Node.Scalar value = new Node.Scalar(member.value().origin(), glued.group(2), Node.Form.TEXT);
    if (places.meant(above, key, value).filter(path -> path.equals(above + key)).isEmpty()) {
      return false;
    }
    problems.add(
        unknown(above, glued.group(), member).withAdvice(ProblemPhrases.say("maybe.space")));
    moved.putIfAbsent(above + key, new Node.Member(member.key(), value));
    return true;
  }

  private void moves(String above, String target, Node.Member member, Problem problem) {
    if (stands(target) && member.key().line().isPresent()) {
      problems.add(problem.withAdvice(ProblemPhrases.say("maybe.other", "other", target)));
      return;
    }
    String key = KeyPlaces.last(target);
    String group = target.substring(0, target.length() - key.length());
    problems.add(
        problem.withAdvice(group.equals(above) ? ProblemPhrases.maybe(key) : place(group, key)));
    moved.putIfAbsent(target, member);
  }

  private static String place(String group, String key) {
    return group.isEmpty()
        ? ProblemPhrases.say("maybe.margin", "key", key)
        : ProblemPhrases.say(
            "maybe.under", "key", key, "groups", String.join(", ", group.split("\\.")));
  }

  private Problem unknown(String above, String name, Node.Member member) {
    String shown = ProblemPhrases.shortened(name);
    return member
        .key()
        .problem(
            above + shown,
            ProblemPhrases.say("found.key-unknown", "key", shown),
            ProblemPhrases.oneOf(places.in(above)));
  }

  private boolean stands(String path) {
    @Nullable Node at = file;
    for (String key : path.split("\\.")) {
      at = at instanceof Node.Group group ? group.at(key) : null;
    }
    return at != null;
  }

  private static Node.Group put(Node.Group group, List<String> steps, Node.Member member) {
    Map<String, Node.Member> members = new LinkedHashMap<>(group.members());
    String key = steps.get(0);
    if (steps.size() == 1) {
      members.putIfAbsent(key, member);
      return new Node.Group(group.origin(), members);
    }
    Node.Member old = members.get(key);
    Node.Group below =
        old != null && old.value() instanceof Node.Group there
            ? there
            : new Node.Group(member.key(), Map.of());
    if (old != null && old.value() != below && !(old.value() instanceof Node.Scalar)) {
      return group;
    }
    Node.Group inner = put(below, steps.subList(1, steps.size()), member);
    members.put(key, new Node.Member(old == null ? member.key() : old.key(), inner));
    return new Node.Group(group.origin(), members);
  }
}
