package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Change;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.SmallChange;
import org.scantling.sayings.Sayings;
import org.scantling.words.ChangeWords;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What a small change asks for, and what comes of it beside the structure that is proposed. */
final class NearMissWords {
  static final Sayings SAYINGS = Sayings.of("near-misses");

  private final Proposal today;
  private final Words words;
  private final Voice voice;

  NearMissWords(Proposal today, Words words, Voice voice) {
    this.today = today;
    this.words = words;
    this.voice = voice;
  }

  String sentence(SmallChange near) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("asked", Sentence.capital(asked(near.change())));
    int fewer = posts(today) - posts(near.then());
    blanks.put("posts", Integer.toString(Math.abs(fewer)));
    blanks.put("changes", Sentence.phrases(changes(near)));
    return SAYINGS.say(fewer == 0 ? "item" : fewer > 0 ? "item.fewer" : "item.more", blanks);
  }

  /** A number beside today's, which it is a step from; a word says enough by itself. */
  private String asked(Change change) {
    return change.to() instanceof Outcome.Amount
        ? ChangeWords.of(voice).change(change)
        : ChangeWords.of(voice).value(change);
  }

  /** The chief choices that come out otherwise, but for those that are asked for. */
  List<String> changes(SmallChange near) {
    List<String> said = new ArrayList<>();
    for (Question question : ChiefChoices.of(words)) {
      Optional<Outcome> before = answer(today, question);
      Optional<Outcome> then = answer(near.then(), question);
      if (!asked(near.change(), question) && then.isPresent() && !before.equals(then)) {
        said.add(WayWords.beside(voice, question, before, then));
      }
    }
    return said;
  }

  /** Whoever asks for concrete knows what is in the holes. */
  private static boolean asked(Change change, Question question) {
    return change.demand().question().filter(question::equals).isPresent()
        || (change.demand() == Demand.FOOTING && question == Question.FOOTING_BACKFILL);
  }

  private static Optional<Outcome> answer(Proposal proposal, Question question) {
    return proposal.decision(question).map(Decision::proposed);
  }

  private static int posts(Proposal proposal) {
    return ((Proposal.Result.Proposed) proposal.result()).structure().footings().count();
  }
}
