package org.scantling.print;

import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** One line for answers that are not about the base: which of several they were worked from. */
public final class BaseNote {
  private BaseNote() {}

  public static String text(BaseChoice choice, Words words, PrintOptions options) {
    return "\n" + TextPage.print(page(choice, words), options);
  }

  public static String markdown(BaseChoice choice, Words words) {
    return "\n" + MarkdownPage.print(page(choice, words));
  }

  private static Page page(BaseChoice choice, Words words) {
    TakenBase taken = new TakenBase(choice, words.voice(Reader.BUILDER, UnitSystem.IMPERIAL));
    return new Page().paragraph(TakenBase.SAYINGS.say("note", taken.blanks()));
  }
}
