package org.scantling.intake;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a YAML or JSON text says, before anyone asks whether it makes sense; each node knows its
 * line.
 */
sealed interface Node {
  Origin origin();

  /** The node in words, as a problem shows it. */
  String words();

  /** How a single value was written. */
  enum Form {
    TEXT,
    NUMBER,
    TRUTH,
    EMPTY
  }

  /** A single value, as written. */
  record Scalar(Origin origin, String text, Form form) implements Node {
    @Override
    public String words() {
      String shown = ProblemPhrases.shortened(text);
      return switch (form) {
        case TEXT -> shown.isEmpty() ? ProblemPhrases.say("found.empty-text") : shown;
        case NUMBER -> ProblemPhrases.say("found.number", "found", shown);
        case TRUTH -> ProblemPhrases.say("found.truth", "found", shown);
        case EMPTY -> ProblemPhrases.say("found.empty");
      };
    }
  }

  /** A list. */
  record Items(Origin origin, List<Node> items) implements Node {
    @Override
    public String words() {
      return ProblemPhrases.say(items.isEmpty() ? "found.empty-list" : "found.list");
    }
  }

  /** A group of keys, in the order of the file. */
  record Group(Origin origin, Map<String, Member> members) implements Node {
    @Override
    public String words() {
      return members.isEmpty()
          ? ProblemPhrases.say("found.empty-group")
          : ProblemPhrases.say(
              "found.group", "keys", ProblemPhrases.shortened(String.join(", ", members.keySet())));
    }

    /** What a key holds, whatever it is; null, which is of no kind, where there is no such key. */
    @Nullable Node at(String key) {
      Member member = members.get(key);
      return member == null ? null : member.value();
    }

    /** Where the value of a key stands; that of the group where there is no such key. */
    Origin originOf(String key) {
      Node value = at(key);
      return value == null ? origin : value.origin();
    }
  }

  /** One key of a group and what it holds. */
  record Member(Origin key, Node value) {}
}
