package org.scantling.words;

import org.scantling.reasons.Outcome;
import org.scantling.reasons.Stated;
import org.scantling.sayings.Sayings;

/** How the things that reasons point at are called: paths of the site file, rows, checks. */
final class References {
  private final Words words;
  private final Voice voice;

  References(Words words, Voice voice) {
    this.words = words;
    this.voice = voice;
  }

  String path(String path) {
    return words
        .subjects()
        .at(path)
        .map(row -> row.label(voice.reader()))
        .or(() -> words.options().find("called", path, voice.reader()))
        .orElseGet(() -> path.substring(path.lastIndexOf('.') + 1).replace('-', ' '));
  }

  String of(String reference) {
    return words
        .numbers(reference)
        .map(row -> reference + " = " + voice.say(row.measure()) + ": " + row.statement())
        .or(
            () ->
                words
                    .tables()
                    .checks()
                    .find(reference)
                    .map(row -> reference + ": " + Voice.tail(row.builderWords())))
        .or(
            () ->
                words
                    .tables()
                    .defaults()
                    .find(reference)
                    .map(
                        row ->
                            Sayings.of("voice")
                                .say(
                                    "by-default",
                                    "reference",
                                    reference,
                                    "statement",
                                    row.statement())))
        .orElse(reference);
  }

  String stated(Stated stated) {
    String path = stated.demand().path();
    return ValuePhrase.said(voice.word("stated", path), value(path, stated.value()));
  }

  /** A value as the site file may state it under a path. */
  String value(String path, Outcome value) {
    return value instanceof Outcome.Amount amount
        ? voice.say(amount.measure())
        : word(path, ((Outcome.Word) value).text());
  }

  /** A word of the file as its path has it, or as the question that it answers. */
  private String word(String path, String word) {
    return words
        .options()
        .find(path, word, voice.reader())
        .or(() -> words.subjects().at(path).map(row -> voice.option(row.question(), word)))
        .orElseGet(() -> voice.word(path, word));
  }
}
