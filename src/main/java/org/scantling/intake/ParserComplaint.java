package org.scantling.intake;

/** What the YAML or JSON parser complains about, without its internals. */
final class ParserComplaint {
  private ParserComplaint() {}

  static String words(String message) {
    return Wording.shortened(message.lines().findFirst().orElse("unreadable"));
  }
}
