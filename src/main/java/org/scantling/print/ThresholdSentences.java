package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;
import org.scantling.tables.DemandRow;
import org.scantling.words.Choices;
import org.scantling.words.ValuePhrase;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Thresholds in sentences: the value, what holds up to it, what comes next, and why. */
final class ThresholdSentences {
  private final Words words;
  private final Choices choices;
  private final Voice voice;
  private final boolean full;

  /**
   * @param full true to tell the whole reason, false to name it
   */
  ThresholdSentences(Words words, Voice voice, boolean full) {
    this.words = words;
    this.choices = words.choices();
    this.voice = voice;
    this.full = full;
  }

  /** A choice with its subject: {@code The posts: 4x4}. */
  String heading(Question question, Choice choice) {
    return Sentence.capital(noun(question)) + ": " + said(question, choice);
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
    List<String> parts = new ArrayList<>();
    for (List<Threshold> alike : groups) {
      Threshold first = alike.get(0);
      parts.add(
          parts.isEmpty()
              ? with(alike) + ", " + turned(first, pronoun(first.question()))
              : either(alike) + " " + said(first.question(), first.there()));
    }
    return Sentence.capital(String.join("; ", parts)) + ".";
  }

  /** A sentence that stands by itself. */
  String alone(Threshold point) {
    return point.at() instanceof Outcome.Amount
        ? number(point, noun(point.question()))
        : words(List.of(point), noun(point.question()));
  }

  private String number(Threshold point, String subject) {
    boolean none = point.there().refused();
    return (point.up() ? "Up to " : "Down to ")
        + phrase(point.demand(), number(point.at()))
        + " "
        + subject
        + " "
        + verb(point.question(), point.here(), "stay")
        + "; at "
        + number(point.beyond())
        + " "
        + (none ? "there is no structure" : turned(point, pronoun(point.question())))
        + why(point);
  }

  private String words(List<Threshold> alike, String subject) {
    Threshold first = alike.get(0);
    return Sentence.capital(with(alike)) + ", " + turned(first, subject) + why(first);
  }

  private String turned(Threshold point, String subject) {
    return subject + " " + verb(point.question(), point.there(), "become");
  }

  private String either(List<Threshold> alike) {
    return Sentence.either(
        alike.stream().map(point -> value(point.demand(), point.beyond())).toList());
  }

  /** Any of these values; what has words of its own, such as no climber at all, comes last. */
  private String with(List<Threshold> alike) {
    Demand demand = alike.get(0).demand();
    List<Threshold> plain =
        alike.stream().filter(point -> own(demand, point.beyond()).isEmpty()).toList();
    List<String> parts = new ArrayList<>();
    if (!plain.isEmpty()) {
      parts.add(phrase(demand, either(plain)));
    }
    alike.forEach(point -> own(demand, point.beyond()).ifPresent(parts::add));
    return Sentence.either(parts);
  }

  private String with(Demand demand, Outcome value) {
    return own(demand, value).orElseGet(() -> phrase(demand, value(demand, value)));
  }

  private Optional<String> own(Demand demand, Outcome value) {
    return voice.changes().without(demand, value);
  }

  /** Where a structure ends. */
  String end(Reach reach, Reach.End end) {
    Demand demand = reach.demand();
    String where =
        end.at() instanceof Outcome.Word
            ? Sentence.capital("not " + with(demand, end.beyond()))
            : (end.up() ? "Up to " : "Down to ")
                + phrase(demand, number(end.at()))
                + "; not at "
                + number(end.beyond());
    return where + ". " + Stopped.sentences(voice, end.refused());
  }

  /** Where a structure begins, for a site that has none today. */
  String begins(Reach reach, Reach.End end) {
    String phrase = with(reach.demand(), end.beyond());
    return end.beyond() instanceof Outcome.Word
        ? "A structure is possible " + phrase + "."
        : "A structure is possible with " + phrase + (end.up() ? " or more." : " or less.");
  }

  /** A choice that comes back: every stretch of it. */
  String mixed(Reach reach, Question question, List<Stretch> stretches) {
    List<String> parts =
        stretches.stream()
            .map(each -> said(question, each.choice()) + " to " + number(each.last()))
            .toList();
    return switches(question)
        + "."
        + " From "
        + number(reach.least())
        + ": "
        + Sentence.list(parts)
        + ".";
  }

  /** The same where the stretches are too many to tell. */
  String comesBack(Question question) {
    return switches(question)
        + "; name "
        + (row(question).many() ? "them" : "it")
        + " alone to see where.";
  }

  private String switches(Question question) {
    boolean many = row(question).many();
    return "Beyond that "
        + pronoun(question)
        + (many ? " switch back and forth" : " switches back and forth");
  }

  /** What was searched along a demand that is a number. */
  String searched(Reach reach) {
    return phrase(reach.demand(), number(reach.least()) + " to " + number(reach.most()));
  }

  String noun(Question question) {
    return row(question).noun();
  }

  private String why(Threshold point) {
    if (point.there() instanceof Choice.Made made) {
      return why(made.decision());
    }
    return point.there() instanceof Choice.Refused refused
        ? ". " + Stopped.sentences(voice, refused.result())
        : ".";
  }

  private String why(Decision decision) {
    Reason reason = decision.governing();
    return full ? ". " + voice.sentence(reason, decision) : name(reason) + ".";
  }

  /** What governs, in a few words after their sign: the check, or what its rule says. */
  private String name(Reason reason) {
    if (reason.finding().evidence().find("broken").isPresent()) {
      String whole = voice.sentence(reason);
      return "; "
          + whole.substring(0, 1).toLowerCase(Locale.ROOT)
          + whole.substring(1, whole.length() - 1);
    }
    if (reason.finding() instanceof Finding.Reject reject
        && words.tables().checks().find(reject.check()).isPresent()) {
      return ": " + voice.check(reject.check());
    }
    String name = reason.note().name();
    return ": " + name.substring(name.indexOf('/') + 1);
  }

  private Choices.Row row(Question question) {
    return choices.find(question).orElseThrow();
  }

  private String pronoun(Question question) {
    return row(question).many() ? "they" : "it";
  }

  private String verb(Question question, Choice choice, String verb) {
    boolean many = row(question).many();
    if (!(choice instanceof Choice.Made)) {
      return many ? "are not needed" : "is not needed";
    }
    return verb + (many ? " " : "s ") + said(question, choice);
  }

  private String said(Question question, Choice choice) {
    if (choice instanceof Choice.Made made) {
      return voice.say(question, made.decision().proposed());
    }
    return choice.refused() ? "no structure" : "none";
  }

  private String phrase(Demand demand, String value) {
    DemandRow row = words.tables().demands().row(demand.path());
    return ValuePhrase.said(row.words(), value);
  }

  private String number(Outcome number) {
    Measure measure = ((Outcome.Amount) number).measure();
    return voice.say(measure);
  }

  private String value(Demand demand, Outcome value) {
    return value instanceof Outcome.Word word ? voice.option(demand, word.text()) : number(value);
  }
}
