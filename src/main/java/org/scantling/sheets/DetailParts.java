package org.scantling.sheets;

import org.scantling.drawing.DetailDrawing;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** The joints and the hole, each larger, with what holds it together. */
final class DetailParts {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private DetailParts() {}

  static void add(SheetParts parts, SheetSource source, Reader reader) {
    Voice voice = source.voice(reader);
    parts.heading(SAYINGS.say("details"));
    for (DetailDrawing each : source.drawings().details()) {
      parts.under(SAYINGS.say("details." + each.word()));
      parts.add(source.figure(each));
      source
          .proposal()
          .decision(each.joint())
          .ifPresent(
              decision ->
                  parts.prose(SAYINGS.say("details.held", "joint", voice.proposed(decision))));
    }
  }
}
