package org.scantling.drawing;

import java.util.List;
import org.scantling.sayings.Sayings;

/** The word at a line under the ground, which is not told by its hue or dashes alone. */
final class DepthWord {
  private static final Sayings SAYINGS = Sayings.of("drawing");

  private DepthWord() {}

  static Drawn.Note frost(Subject subject, double depthIn, List<Drawn.Spot> spots) {
    return new Drawn.Note(said("frost", subject, depthIn), Lettering.FROST, spots);
  }

  static Drawn.Note rock(Subject subject, double depthIn, List<Drawn.Spot> spots) {
    return new Drawn.Note(said("rock", subject, depthIn), Lettering.FIGURE, spots);
  }

  private static String said(String what, Subject subject, double depthIn) {
    return SAYINGS.say(what, "depth", subject.lengths().said(depthIn));
  }
}
