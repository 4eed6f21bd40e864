package org.scantling.visit;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.intake.KeyReader;
import org.scantling.intake.NearMiss;
import org.scantling.quantity.Measure;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.sayings.Sayings;

/** What a typed line is taken for, question by question. */
final class AnswerReading {
  private static final int LONGEST_TEXT = 200;

  private final KeyReader keys;
  private final KeySnippets snippets;
  private final VisitChoices choices;
  private final Sayings sayings;

  AnswerReading(KeyReader keys, VisitChoices choices, Sayings sayings) {
    this.keys = keys;
    this.snippets = new KeySnippets(keys);
    this.choices = choices;
    this.sayings = sayings;
  }

  /** The answer that is kept, or what is wrong with what was typed. */
  record Kept(Optional<String> answer, String refusal) {
    static Kept of(String answer) {
      return new Kept(Optional.of(answer), "");
    }

    static Kept refused(String why) {
      return new Kept(Optional.empty(), why);
    }
  }

  Kept read(VisitRow row, String typed) {
    String plain = typed.strip();
    return switch (row.asks()) {
      case TEXT -> text(plain);
      case DATE -> date(plain);
      case WORDS -> word(row, plain);
      case SEVERAL -> several(row, plain);
      case LENGTH -> length(plain);
      case PIECES -> pieces(row, plain);
      case BASE -> Kept.of(choices.of(row).one(plain).orElse(plain));
      default -> Kept.of(plain);
    };
  }

  private Kept text(String plain) {
    boolean control = plain.codePoints().anyMatch(Character::isISOControl);
    return control || plain.length() > LONGEST_TEXT
        ? Kept.refused(sayings.say("bad-text", "most", String.valueOf(LONGEST_TEXT)))
        : Kept.of(plain);
  }

  private Kept date(String plain) {
    try {
      return Kept.of(LocalDate.parse(plain).toString());
    } catch (DateTimeParseException noDay) {
      return Kept.refused(sayings.say("bad-date", "found", plain));
    }
  }

  private Kept length(String plain) {
    try {
      double inches = QuantityKind.LENGTH.parse(plain);
      return inches < 0 ? Kept.refused(sayings.say("negative", "found", plain)) : Kept.of(plain);
    } catch (QuantityException noLength) {
      return Kept.refused(noLength.getMessage() + ".");
    }
  }

  private Kept pieces(VisitRow row, String plain) {
    if (TimberPieces.isKept(plain)) {
      return Kept.of(plain);
    }
    Optional<TimberPieces> pieces = TimberPieces.parse(plain).filter(TimberPieces::sound);
    if (pieces.isEmpty()) {
      return Kept.refused(sayings.say("bad-pieces", "found", plain));
    }
    Optional<String> size = pieces.get().size();
    return size.isPresent() && !keys.words(row.path()).contains(size.get())
        ? unknown(new ChoiceList(choices.sizes(keys.words(row.path()))), size.get())
        : Kept.of(pieces.get().kept());
  }

  private Kept word(VisitRow row, String plain) {
    ChoiceList list = choices.of(row);
    return one(row, list, plain).map(Kept::of).orElseGet(() -> unknown(row, list, plain));
  }

  /** By its number or its beginning, or as the reader of the file takes it. */
  private Optional<String> one(VisitRow row, ChoiceList list, String typed) {
    return list.one(typed)
        .or(
            () ->
                row.hasPath()
                    ? keys.word(row.path(), typed).filter(list.words()::contains)
                    : Optional.empty());
  }

  /** The reader of the file says it best, where it knows all the words. */
  private Kept unknown(VisitRow row, ChoiceList list, String typed) {
    boolean theirs = row.hasPath() && keys.words(row.path()).containsAll(list.words());
    return Optional.of(typed)
        .filter(text -> theirs)
        .flatMap(text -> keys.wordRefusal(row.path(), text))
        .map(Kept::refused)
        .orElseGet(() -> unknown(list, typed));
  }

  private Kept several(VisitRow row, String plain) {
    ChoiceList list = choices.of(row);
    Set<String> words = new LinkedHashSet<>();
    for (String part : ChoiceList.parts(plain, part -> one(row, list, part).isPresent())) {
      Optional<String> word = one(row, list, part);
      if (word.isEmpty()) {
        return unknown(row, list, part);
      }
      words.add(word.get());
    }
    List<String> all = new ArrayList<>(words);
    if (all.contains("none") && all.size() > 1) {
      return Kept.refused(sayings.say("none-and-more"));
    }
    return all.isEmpty() ? unknown(list, plain) : Kept.of(String.join(", ", all));
  }

  private Kept unknown(ChoiceList list, String typed) {
    List<String> words = list.words();
    int last = words.size() - 1;
    String listed =
        words.size() == 1
            ? words.get(0)
            : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    return Kept.refused(
        (sayings.say("unknown-word", "found", typed.isEmpty() ? "nothing" : typed, "words", listed)
                + " "
                + NearMiss.advice(typed, words))
            .strip());
  }

  /** What the reader of the file says against it, beside the answers before. */
  Optional<String> refusal(VisitRow row, List<VisitRow> asked, VisitAnswers answers) {
    Map<String, String> written = snippets.of(asked, answers);
    return row.hasPath() && written.containsKey(KeySnippets.key(row))
        ? keys.refusal(written, row.path())
        : Optional.empty();
  }

  /** The amount that the answer to a row is. */
  Optional<Measure> amount(VisitRow row, List<VisitRow> asked, VisitAnswers answers) {
    if (row.asks() == AskedAs.LENGTH) {
      return answers
          .of(row.id())
          .map(each -> Measure.inches(QuantityKind.LENGTH.parse(each.text())));
    }
    return row.asks() == AskedAs.KEY && !row.path().equals(KeySnippets.MACHINE_WIDTH)
        ? keys.amount(snippets.of(asked, answers), row.path())
        : Optional.empty();
  }
}
