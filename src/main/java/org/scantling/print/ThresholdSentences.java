package org.scantling.print;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;
import org.scantling.sayings.Sayings;
import org.scantling.words.Choices;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Thresholds in sentences: the value, what holds up to it, what comes next, and why. */
final class ThresholdSentences {
  private static final Sayings SAYINGS = Sayings.of("thresholds");

  private final Words words;
  private final Choices choices;
  private final Voice voice;
  private final DemandWords demands;
  private final boolean full;

  /**
   * @param full true to tell the whole reason, false to name it
   */
  ThresholdSentences(Words words, Voice voice, boolean full) {
    this.words = words;
    this.choices = words.choices();
    this.voice = voice;
    this.demands = new DemandWords(words, voice);
    this.full = full;
  }

  /** A choice with its subject: {@code The posts: 4x4}. */
  String heading(Question question, Choice choice) {
    return SAYINGS.say(
        "heading", "choice", Sentence.capital(noun(question)), "value", said(question, choice));
  }

  /** The sentence under a heading that names the subject. */
  String number(Threshold point) {
    return number(point, pronoun(point.question()));
  }

  /** Words of one demand that lead to the same choice, told together under such a heading. */
  String alike(List<Threshold> alike) {
    return words(alike, pronoun(alike.get(0).question()));
  }

  /** Groups of such words in one sentence, without their reasons. */
  String groups(List<List<Threshold>> groups) {
    Threshold first = groups.get(0).get(0);
    List<String> others =
        groups.stream()
            .skip(1)
            .map(
                alike ->
                    SAYINGS.say(
                        "group",
                        "demands",
                        demands.either(alike),
                        "value",
                        said(first.question(), alike.get(0).there())))
            .toList();
    return SAYINGS.say(
        "groups",
        "demands",
        Sentence.capital(demands.anyOf(groups.get(0))),
        "then",
        turned(first, pronoun(first.question())),
        "others",
        String.join("; ", others));
  }

  /** A sentence that stands by itself. */
  String alone(Threshold point) {
    return point.at() instanceof Outcome.Amount
        ? number(point, noun(point.question()))
        : words(List.of(point), noun(point.question()));
  }

  private String number(Threshold point, String subject) {
    Map<String, String> blanks = new HashMap<>(why(point));
    blanks.put("demand", demands.phrase(point.demand(), point.at()));
    blanks.put("choice", clause("stays", point.question(), point.here(), subject));
    blanks.put("beyond", demands.value(point.demand(), point.beyond()));
    blanks.put(
        "then",
        point.there().refused()
            ? SAYINGS.say("no-structure")
            : turned(point, pronoun(point.question())));
    return SAYINGS.say(point.up() ? "up-to" : "down-to", blanks);
  }

  private String words(List<Threshold> alike, String subject) {
    Threshold first = alike.get(0);
    Map<String, String> blanks = new HashMap<>(why(first));
    blanks.put("demands", Sentence.capital(demands.anyOf(alike)));
    blanks.put("then", turned(first, subject));
    return SAYINGS.say("with", blanks);
  }

  private String turned(Threshold point, String subject) {
    return clause("becomes", point.question(), point.there(), subject);
  }

  /** A choice that comes back: every stretch of it. */
  String mixed(Reach reach, Question question, List<Stretch> stretches) {
    List<String> parts =
        stretches.stream()
            .map(
                each ->
                    SAYINGS.say(
                        "stretch",
                        "value",
                        said(question, each.choice()),
                        "last",
                        demands.value(reach.demand(), each.last())))
            .toList();
    return SAYINGS.say(
        "mixed",
        "count",
        count(question),
        "least",
        demands.value(reach.demand(), reach.least()),
        "stretches",
        Sentence.list(parts));
  }

  /** The same where the stretches are too many to tell. */
  String comesBack(Question question) {
    return SAYINGS.say("mixed.many", "count", count(question));
  }

  String noun(Question question) {
    return row(question).noun();
  }

  /** What fills the blanks {@code why}, {@code named} and {@code broken}: one of them, or none. */
  private Map<String, String> why(Threshold point) {
    if (point.there() instanceof Choice.Made made) {
      Reason reason = made.decision().governing();
      return full ? Map.of("why", voice.sentence(reason, made.decision())) : name(reason);
    }
    return point.there() instanceof Choice.Refused refused
        ? Map.of("why", Stopped.sentences(voice, refused.result()))
        : Map.of();
  }

  /** What governs, in a few words: the check, or what its rule says. */
  private Map<String, String> name(Reason reason) {
    if (reason.finding().evidence().find("broken").isPresent()) {
      String whole = voice.sentence(reason);
      return Map.of(
          "broken",
          whole.substring(0, 1).toLowerCase(Locale.ROOT) + whole.substring(1, whole.length() - 1));
    }
    if (reason.finding() instanceof Finding.Reject reject
        && words.tables().checks().find(reject.check()).isPresent()) {
      return Map.of("named", voice.check(reject.check()));
    }
    String name = reason.note().name();
    return Map.of("named", name.substring(name.indexOf('/') + 1));
  }

  private Choices.Row row(Question question) {
    return choices.find(question).orElseThrow();
  }

  private String pronoun(Question question) {
    return SAYINGS.say("pronoun", "count", count(question));
  }

  /** What the words of a sentence about a choice have to agree with. */
  private String count(Question question) {
    return row(question).many() ? "2" : "1";
  }

  private String clause(String saying, Question question, Choice choice, String subject) {
    return SAYINGS.say(
        choice instanceof Choice.Made ? saying : "unneeded",
        "choice",
        subject,
        "count",
        count(question),
        "value",
        said(question, choice));
  }

  private String said(Question question, Choice choice) {
    if (choice instanceof Choice.Made made) {
      return voice.say(question, made.decision().proposed());
    }
    return SAYINGS.say(choice.refused() ? "value.refused" : "value.none");
  }
}
