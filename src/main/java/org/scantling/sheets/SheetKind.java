package org.scantling.sheets;

import java.util.List;
import org.scantling.sayings.Sayings;

/** The sheets of a proposal, each for one reader. */
public enum SheetKind {
  CLIENT("client"),
  BUILDER("builder"),
  ENGINEER("engineer");

  private static final Sayings SAYINGS = Sayings.of("sheets");

  private final String word;

  SheetKind(String word) {
    this.word = word;
  }

  /** The name that is typed and that its files have. */
  public String word() {
    return word;
  }

  /** The sheet of a proposal. */
  public SheetDocument of(SheetSource source) {
    String kind =
        SAYINGS.say(
            "number",
            "kind",
            SAYINGS.say("kind." + word),
            "number",
            Integer.toString(ordinal() + 1));
    return new SheetDocument(
        word,
        source.proposal().title(),
        kind,
        SAYINGS.say("foot", "version", source.version()),
        Paper.of(source.how().units()),
        parts(source));
  }

  private List<Part> parts(SheetSource source) {
    return switch (this) {
      case CLIENT -> new ClientSheet(source).parts();
      case BUILDER -> new BuilderSheet(source).parts();
      case ENGINEER -> new EngineerSheet(source).parts();
    };
  }
}
