package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.sayings.Sayings;
import org.scantling.words.AnswerWords;
import org.scantling.words.CauseWords;
import org.scantling.words.Voice;

/** Explains to the client: plain words, few numbers, nothing that is not so. */
final class ClientWhy {
  private static final Sayings SAYINGS = Sayings.of("why");
  private static final String ABOUT = "about ";

  private final Told told;
  private final Optional<BringBack> back;
  private final Voice voice;
  private final Drivers drivers;

  /**
   * @param back what would bring the base's answer back, where that was searched
   */
  ClientWhy(Told told, Optional<BringBack> back) {
    this.told = told;
    this.back = back;
    this.voice = told.voice();
    this.drivers = new Drivers(told.proposal(), told.words());
  }

  void write(Page page, List<Decision> decisions) {
    Decision chief = decisions.get(0);
    page.title(Sentence.capital(voice.label(chief.question())));
    page.paragraph(answer(chief));
    page.paragraph(because(chief));
    smaller(page, chief);
    back.ifPresent(each -> each.write(page));
    List<Block.Item> others = new ArrayList<>();
    decisions.stream().skip(1).filter(this::worthSaying).forEach(each -> others.add(item(each)));
    if (!others.isEmpty()) {
      page.heading(SAYINGS.say("client.also")).items(others);
    }
  }

  String answer(Decision decision) {
    Question question = decision.question();
    String now = Sentence.capital(AnswerWords.of(voice).described(question, decision.proposed()));
    Map<String, String> blanks = new HashMap<>();
    blanks.put("now", now);
    blanks.put("design", told.proposal().baseTitle());
    Optional<String> before =
        decision.base().map(base -> AnswerWords.of(voice).detailed(question, base));
    before.ifPresent(said -> blanks.put("before", said));
    return SAYINGS.say(before.map(said -> beside(decision, said)).orElse("client.here"), blanks);
  }

  /** Which sentence tells it beside what was. */
  private String beside(Decision decision, String before) {
    if (!decision.changed()) {
      return "client.kept";
    }
    String now = AnswerWords.of(voice).detailed(decision.question(), decision.proposed());
    return !alike(now, before) ? "client.changed" : more(decision) ? "client.more" : "client.less";
  }

  /**
   * True of {@code 10 1/2 in} and {@code about 10 1/2 in}: nobody sees the one change to the other.
   */
  private static boolean alike(String now, String before) {
    return now.replace(ABOUT, "").equals(before.replace(ABOUT, ""));
  }

  /** Of a change too small for the client's numbers to show, which way it goes. */
  private static boolean more(Decision decision) {
    return amount(decision.proposed()) > amount(decision.base().orElseThrow());
  }

  private static double amount(Outcome outcome) {
    return outcome instanceof Outcome.Amount amount ? amount.measure().amount() : 0;
  }

  String because(Decision decision) {
    String sentence = sentence(decision);
    List<String> causes =
        drivers.of(decision).stream()
            .map(each -> CauseWords.of(voice).driver(each, drivers.worked(decision)))
            .toList();
    return decision.changed() && !causes.isEmpty()
        ? SAYINGS.say("client.because", "why", sentence, "causes", Sentence.phrases(causes))
        : sentence;
  }

  /** What was asked for and had to give way, then what governs. */
  private String sentence(Decision decision) {
    return Unmet.wish(told, decision).map(wish -> voice.sentence(wish, decision) + " ").orElse("")
        + voice.sentence(decision.governing(), decision);
  }

  /** The nearest that was tried and could not be, other than what governs. */
  private void smaller(Page page, Decision decision) {
    if (decision.changed()) {
      decision.rejected().stream()
          .filter(each -> !same(each, decision.governing()))
          .reduce((one, next) -> next)
          .ifPresent(nearest -> page.paragraph(voice.sentence(nearest, decision)));
    }
  }

  private static boolean same(Reason one, Reason other) {
    return one.finding().equals(other.finding()) || option(one).equals(option(other));
  }

  private static String option(Reason reason) {
    return reason.finding() instanceof Finding.Reject reject ? reject.option() : "";
  }

  private boolean worthSaying(Decision decision) {
    return decision.changed() || told.words().subjects().row(decision.question()).safety();
  }

  Block.Item item(Decision decision) {
    String now = voice.say(decision.question(), decision.proposed());
    Map<String, String> blanks = new HashMap<>();
    blanks.put("now", now);
    blanks.put("why", sentence(decision));
    decision
        .base()
        .filter(base -> decision.changed())
        .map(base -> voice.say(decision.question(), base))
        .ifPresent(before -> blanks.putAll(changed(decision, now, before)));
    return new Block.Item(
        Sentence.capital(voice.label(decision.question())), SAYINGS.say("client.item", blanks));
  }

  private static Map<String, String> changed(Decision decision, String now, String before) {
    if (!alike(now, before)) {
      return Map.of("before", before);
    }
    return Map.of(more(decision) ? "more" : "less", "");
  }
}
