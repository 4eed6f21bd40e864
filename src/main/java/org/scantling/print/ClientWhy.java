package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.words.Voice;

/** Explains to the client: plain words, few numbers, nothing that is not so. */
final class ClientWhy {
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
      page.heading("Also about this").items(others);
    }
  }

  private String answer(Decision decision) {
    Question question = decision.question();
    String now = Sentence.capital(voice.described(question, decision.proposed()));
    if (decision.base().isEmpty()) {
      return now + " here.";
    }
    String at = " at the " + told.proposal().baseTitle() + ".";
    if (!decision.changed()) {
      return now + ", just as" + at;
    }
    String before = voice.detailed(question, decision.base().get());
    return alike(voice.detailed(question, decision.proposed()), before)
        ? now + ", " + hair(decision) + at
        : now + " here; " + before + at;
  }

  /**
   * True of {@code 10 1/2 in} and {@code about 10 1/2 in}: nobody sees the one change to the other.
   */
  private static boolean alike(String now, String before) {
    return now.replace(ABOUT, "").equals(before.replace(ABOUT, ""));
  }

  /** A change too small for the client's numbers to show. */
  private static String hair(Decision decision) {
    return amount(decision.proposed()) > amount(decision.base().orElseThrow())
        ? "a little more than"
        : "a little less than";
  }

  private static double amount(Outcome outcome) {
    return outcome instanceof Outcome.Amount amount ? amount.measure().amount() : 0;
  }

  private String because(Decision decision) {
    String sentence = sentence(decision);
    List<String> causes =
        drivers.of(decision).stream()
            .map(each -> voice.driver(each, drivers.worked(decision)))
            .toList();
    return decision.changed() && !causes.isEmpty()
        ? sentence + " What is different here: " + Sentence.phrases(causes) + "."
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

  private String before(Decision decision, String base) {
    return alike(voice.say(decision.question(), decision.proposed()), base)
        ? ", " + hair(decision) + " before"
        : ", instead of " + base;
  }

  private Block.Item item(Decision decision) {
    String before =
        decision
            .base()
            .filter(base -> decision.changed())
            .map(base -> before(decision, voice.say(decision.question(), base)))
            .orElse("");
    return new Block.Item(
        Sentence.capital(voice.label(decision.question())),
        voice.say(decision.question(), decision.proposed()) + before + ". " + sentence(decision));
  }
}
