package org.scantling.cli;

import org.scantling.intake.Intake;
import org.scantling.print.BaseNote;
import org.scantling.print.PrintOptions;
import org.scantling.words.Words;

/** What is added to an answer where the site file names several bases, and to no other. */
final class ChosenBase {
  private ChosenBase() {}

  static String text(Intake intake, Words words, PrintOptions how) {
    return intake.choice().map(choice -> BaseNote.text(choice, words, how)).orElse("");
  }

  static String markdown(Intake intake, Words words) {
    return intake.choice().map(choice -> BaseNote.markdown(choice, words)).orElse("");
  }
}
