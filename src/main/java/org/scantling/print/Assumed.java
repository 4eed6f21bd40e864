package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Reasoned;
import org.scantling.sayings.Sayings;
import org.scantling.words.AnswerWords;
import org.scantling.words.SubjectRow;
import org.scantling.words.Subjects;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What the site file left open and a rule filled from outside both files. */
final class Assumed {
  private final Reasoned answer;
  private final Subjects subjects;
  private final Voice voice;

  Assumed(Told told) {
    this(told.proposal(), told.words(), told.voice());
  }

  Assumed(Reasoned answer, Words words, Voice voice) {
    this.answer = answer;
    this.subjects = words.subjects();
    this.voice = voice;
  }

  /** True where a fact about the place or the timber was neither given nor kept from the base. */
  boolean is(Decision decision) {
    return unsaid(decision)
        && priority(decision).filter(priority -> priority == Priority.KEPT).isEmpty();
  }

  /** True where such a fact was not given, even where the base has it so. */
  private boolean unsaid(Decision decision) {
    SubjectRow row = subjects.row(decision.question());
    return row.place() && answer.assumptions().contains(row.path());
  }

  /** What about the place was assumed, by name. */
  List<String> place() {
    return subjects.rows().stream()
        .filter(SubjectRow::site)
        .filter(row -> answer.decision(row.question()).filter(this::is).isPresent())
        .map(row -> voice.label(row.question()))
        .toList();
  }

  void write(Page page) {
    List<Block.Item> items = new ArrayList<>();
    for (SubjectRow row : subjects.rows()) {
      answer
          .decision(row.question())
          .filter(each -> unsaid(each))
          .ifPresent(each -> items.add(item(each)));
    }
    answer.assumptions().forEach(path -> absent(path).ifPresent(items::add));
    if (!items.isEmpty()) {
      page.heading(Sayings.of("caveats").say("assumed")).items(items);
    }
  }

  /** As what words of the file were read, which counts where nothing is built as well. */
  void readings(Page page) {
    List<Block.Item> items =
        answer.assumptions().stream()
            .filter(path -> path.contains("="))
            .flatMap(path -> absent(path).stream())
            .toList();
    if (!items.isEmpty()) {
      page.heading(Sayings.of("caveats").say("readings")).items(items);
    }
  }

  private Optional<Block.Item> absent(String path) {
    return AnswerWords.of(voice)
        .absent(path)
        .map(words -> new Block.Item("", Sentence.capital(words) + "."));
  }

  private Block.Item item(Decision decision) {
    return new Block.Item(
        Sentence.capital(voice.label(decision.question())),
        Sourced.sentence(voice, decision.governing(), decision));
  }

  /** How strongly the governing finding wished for the answer, where it was a wish. */
  static Optional<Priority> priority(Decision decision) {
    Finding finding = decision.governing().finding();
    if (finding instanceof Finding.PreferNumber wish) {
      return Optional.of(wish.priority());
    }
    return finding instanceof Finding.PreferOption wish
        ? Optional.of(wish.priority())
        : Optional.empty();
  }
}
