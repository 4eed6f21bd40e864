package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scantling.reasons.Change;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;
import org.scantling.words.AnswerWords;
import org.scantling.words.ChangeWords;
import org.scantling.words.Choices;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Ways to a wanted answer, each with what else it changes in the structure. */
final class WayWords {
  private final Words words;
  private final Voice voice;
  private final ChangeWords changes;
  private final Wanted wanted;
  private final Proposal today;

  WayWords(Told told, Wanted wanted) {
    this.words = told.words();
    this.voice = told.voice();
    this.changes = ChangeWords.of(voice);
    this.wanted = wanted;
    this.today = told.proposal();
  }

  /** A phrase with what every one of them may name. */
  String phrase(String id, Map<String, String> more) {
    Map<String, String> blanks = new HashMap<>(more);
    Choices.Row row = words.choices().find(wanted.question()).orElseThrow();
    blanks.put("id", wanted.question().id());
    blanks.put("subject", row.noun(voice.reader()));
    blanks.put("is", row.many() ? "are" : "is");
    blanks.put("wanted", wanted());
    today
        .decision(wanted.question())
        .ifPresent(each -> blanks.put("now", voice.say(each.question(), each.proposed())));
    return capital(voice.phrase(id, blanks));
  }

  private String capital(String said) {
    return voice.reader() == Reader.ENGINEER ? said : Sentence.capital(said);
  }

  String phrase(String id) {
    return phrase(id, Map.of());
  }

  private String wanted() {
    String value = voice.say(wanted.question(), wanted.value());
    String bound = wanted.bound().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return voice.phrase("bound." + bound, Map.of("wanted", value));
  }

  List<Block.Item> items(List<Way> ways) {
    return ways.stream().map(this::item).toList();
  }

  /** What is asked otherwise, and what comes of it where there is a structure to compare with. */
  Block.Item item(Way way) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("asked", Sentence.phrases(way.changes().stream().map(changes::change).toList()));
    if (today.proposed()) {
      blanks.put("then", then(way));
    }
    return new Block.Item("", capital(voice.phrase("way", blanks)));
  }

  /** What else of the structure changes, with the cautions that are new. */
  private String then(Way way) {
    List<String> other = beside(way);
    String then =
        other.isEmpty()
            ? voice.phrase("then.nothing", Map.of())
            : voice.phrase("then", Map.of("changes", String.join("; ", other)));
    return then
        + cautions(way).stream()
            .map(each -> voice.phrase("caution", Map.of("text", voice.sentence(each))))
            .distinct()
            .map(" "::concat)
            .collect(Collectors.joining());
  }

  private List<String> beside(Way way) {
    List<String> beside = new ArrayList<>();
    for (Question question : others(way)) {
      Optional<Outcome> before = answer(today, question);
      Optional<Outcome> then = answer(way.then(), question);
      if (!before.equals(then)) {
        beside.add(beside(voice, question, before, then));
      }
    }
    return beside;
  }

  /** The chief choices of a structure; what is wanted and what is asked for are told already. */
  Set<Question> others(Way way) {
    Set<Question> asked =
        way.changes().stream()
            .flatMap(each -> each.demand().question().stream())
            .collect(Collectors.toSet());
    return words.choices().questions().stream()
        .filter(each -> each != wanted.question() && !asked.contains(each))
        .filter(each -> words.choices().find(each).orElseThrow().chief())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  static Optional<Outcome> answer(Proposal proposal, Question question) {
    return proposal.decision(question).map(Decision::proposed);
  }

  /** One choice then beside what it is now; there is one of the two at least. */
  static String beside(
      Voice voice, Question question, Optional<Outcome> before, Optional<Outcome> then) {
    if (then.isEmpty()) {
      return voice.phrase(
          "beside.gone", Map.of("before", AnswerWords.of(voice).member(question, before.get())));
    }
    String now = AnswerWords.of(voice).member(question, then.get());
    return before.isEmpty()
        ? voice.phrase("beside.new", Map.of("now", now))
        : voice.phrase("beside", Map.of("now", now, "before", voice.say(question, before.get())));
  }

  /** Those that the proposal of today does not give. */
  List<Reason> cautions(Way way) {
    Set<String> known =
        today.cautions().stream().map(each -> each.note().id()).collect(Collectors.toSet());
    return today.proposed()
        ? way.then().cautions().stream().filter(each -> !known.contains(each.note().id())).toList()
        : List.of();
  }

  /** The new values alone: {@code a way 6 ft wide or gusts of 98 mph}. */
  String values(List<Change> told) {
    return Sentence.either(told.stream().map(changes::value).toList());
  }
}
