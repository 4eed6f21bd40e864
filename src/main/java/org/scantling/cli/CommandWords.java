package org.scantling.cli;

import org.scantling.sayings.Sayings;

/** What the command line itself says, most of it refusals: rules/words/command-line.csv. */
final class CommandWords {
  private CommandWords() {}

  /** A sentence with its blanks filled, name and filling in turn; read when it is first needed. */
  static String say(String name, String... blanks) {
    return Sayings.of("command-line").say(name, blanks);
  }

  /** What was typed, or that nothing was. */
  static String found(String typed) {
    return typed.isBlank() ? say("found.nothing") : typed.strip();
  }
}
