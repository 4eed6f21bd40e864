package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Reason;
import org.scantling.reasons.TriedBase;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** Which of several bases was taken, and what each of the others would have changed. */
final class TakenBase {
  static final Sayings SAYINGS = Sayings.of("bases");

  private static final String LAST = "named";

  private final BaseChoice choice;
  private final Voice voice;

  TakenBase(BaseChoice choice, Voice voice) {
    this.choice = choice;
    this.voice = voice;
  }

  /** A paragraph, where the site file names several bases. */
  static void write(Page page, Proposal proposal, Voice voice) {
    proposal.bases().ifPresent(choice -> page.paragraph(new TakenBase(choice, voice).paragraph()));
  }

  private String paragraph() {
    List<String> sentences = new ArrayList<>(List.of(taken()));
    choice.others().forEach(each -> sentences.add(other(each)));
    return String.join(" ", sentences);
  }

  /** Which one, and that it needs the least change. */
  String taken() {
    return SAYINGS.say(saying(), blanks());
  }

  private String saying() {
    if (!choice.taken().proposal().proposed()) {
      return "taken.none";
    }
    return alike() ? "taken.alike" : "taken";
  }

  /** True where nothing but their order tells it from another. */
  private boolean alike() {
    return choice.others().stream()
        .flatMap(each -> each.reason().stream())
        .anyMatch(each -> row(each).equals(LAST));
  }

  private static String row(Reason reason) {
    return reason.finding().evidence().rows().get(0).id();
  }

  Map<String, String> blanks() {
    return Map.of("taken", choice.taken().name(), "count", Integer.toString(choice.tried().size()));
  }

  private String other(TriedBase base) {
    Map<String, String> blanks = new HashMap<>(ruledOut(base));
    blanks.put("reason", reason(base));
    blanks.put(
        "parts", Sentence.list(base.changed().stream().map(voice::label).distinct().toList()));
    return SAYINGS.say("other", blanks);
  }

  String reason(TriedBase base) {
    return voice.sentence(base.reason().orElseThrow(), choice.decision());
  }

  /** Of a base that leads to nothing, the demand that is behind it. */
  Map<String, String> ruledOut(TriedBase base) {
    return broken(base).map(none -> Map.of("demand", voice.path(none.demand()))).orElse(Map.of());
  }

  private static Optional<NeedsEngineer> broken(TriedBase base) {
    return base.proposal().result() instanceof NeedsEngineer none
        ? Optional.of(none)
        : Optional.empty();
  }
}
