package org.scantling.print;

import java.util.HashMap;
import java.util.Map;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.TrackRecord;
import org.scantling.words.Voice;

/** Since when the base has stood, and on what ground where that falls. */
final class Standing {
  private Standing() {}

  /** What fills the blanks {@code since} and, where the ground falls, {@code fall}. */
  static Map<String, String> blanks(TrackRecord record, Voice voice) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("since", Integer.toString(record.sinceYear()));
    if (record.slopePercent() > 0) {
      blanks.put("fall", voice.say(new Measure(record.slopePercent(), Unit.PERCENT)));
    }
    return blanks;
  }
}
