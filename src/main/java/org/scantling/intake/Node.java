package org.scantling.intake;

import java.util.List;
import java.util.Map;

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
        case TEXT -> shown.isEmpty() ? "(empty text)" : shown;
        case NUMBER -> shown + " (a bare number)";
        case TRUTH -> shown + " (yes or no)";
        case EMPTY -> "(empty)";
      };
    }
  }

  /** A list. */
  record Items(Origin origin, List<Node> items) implements Node {
    @Override
    public String words() {
      return items.isEmpty() ? "(an empty list)" : "(a list)";
    }
  }

  /** A group of keys, in the order of the file. */
  record Group(Origin origin, Map<String, Member> members) implements Node {
    @Override
    public String words() {
      return members.isEmpty()
          ? "(a group without keys)"
          : "(a group of keys: "
              + ProblemPhrases.shortened(String.join(", ", members.keySet()))
              + ")";
    }
  }

  /** One key of a group and what it holds. */
  record Member(Origin key, Node value) {}
}
