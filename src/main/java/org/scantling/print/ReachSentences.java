package org.scantling.print;

import java.util.HashMap;
import java.util.Map;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Reach;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** How far a search went along a demand, and where a structure ends or begins on the way. */
final class ReachSentences {
  private static final Sayings SAYINGS = Sayings.of("thresholds");

  private final Voice voice;
  private final DemandWords demands;

  ReachSentences(Words words, Voice voice) {
    this.voice = voice;
    this.demands = new DemandWords(words, voice);
  }

  /** Where a structure ends. */
  String end(Reach reach, Reach.End end) {
    Demand demand = reach.demand();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("why", Stopped.sentences(voice, end.refused()));
    if (end.at() instanceof Outcome.Word) {
      blanks.put("demand", demands.with(demand, end.beyond()));
      return SAYINGS.say("end", blanks);
    }
    blanks.put("demand", demands.phrase(demand, end.at()));
    blanks.put("beyond", demands.value(demand, end.beyond()));
    return SAYINGS.say(end.up() ? "end.up-to" : "end.down-to", blanks);
  }

  /** Where a structure begins, for a site that has none today. */
  String begins(Reach reach, Reach.End end) {
    String saying =
        end.beyond() instanceof Outcome.Word
            ? "possible"
            : end.up() ? "possible.from" : "possible.down-to";
    return SAYINGS.say(saying, "demand", demands.with(reach.demand(), end.beyond()));
  }

  /** What was searched along a demand that is a number. */
  String searched(Reach reach) {
    return demands.phrase(
        reach.demand(),
        SAYINGS.say(
            "range",
            "least",
            demands.value(reach.demand(), reach.least()),
            "most",
            demands.value(reach.demand(), reach.most())));
  }
}
