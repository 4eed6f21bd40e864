package org.scantling.print;

import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.TrackRecord;
import org.scantling.words.Voice;

/** Since when the base has stood, and on what ground where that falls. */
final class Standing {
  private Standing() {}

  static String of(TrackRecord record, Voice voice) {
    String since = "has stood since " + record.sinceYear();
    return record.slopePercent() > 0
        ? since + " on a fall of " + voice.say(new Measure(record.slopePercent(), Unit.PERCENT))
        : since;
  }
}
