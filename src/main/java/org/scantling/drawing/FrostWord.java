package org.scantling.drawing;

import java.util.List;
import org.scantling.sayings.Sayings;

/** The word at the frost line, which is not told by its hue alone. */
final class FrostWord {
  private static final Sayings SAYINGS = Sayings.of("drawing");

  private FrostWord() {}

  static Drawn.Note note(Subject subject, double depthIn, List<Drawn.Spot> spots) {
    return new Drawn.Note(
        SAYINGS.say("frost", "depth", subject.lengths().said(depthIn)), Lettering.FROST, spots);
  }
}
