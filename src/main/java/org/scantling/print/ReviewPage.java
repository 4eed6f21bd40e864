package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.Shortfall.Kind;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** The page of a check, for the builder: the answer, what fails, then everything. */
final class ReviewPage {
  private static final Sayings SAYINGS = Sayings.of("review");

  private final Review review;
  private final Words words;
  private final Voice voice;
  private final CheckLine line;
  private final Page page = new Page();

  private ReviewPage(Review review, Words words, UnitSystem units) {
    this.review = review;
    this.words = words;
    this.voice = words.voice(Reader.BUILDER, units);
    this.line = new CheckLine(voice, review.checkLimits());
  }

  static Page of(Review review, Words words, UnitSystem units) {
    return new ReviewPage(review, words, units).page();
  }

  private Page page() {
    if (review.refusal().isPresent()) {
      new EngineerSection(voice, review.baseTitle(), false).write(page, review.refusal().get());
      what();
    } else {
      page.paragraph(new ReviewAnswer(review, voice).text());
      what();
      failing();
      limits("limits.heading", Kind.DOES_NOT_MEET);
      limits("asked.heading", Kind.NOT_AS_ASKED);
      limits("habits.heading", Kind.OUT_OF_HABIT);
      limits("counted.heading", Kind.TAKEN_OTHERWISE);
      all();
      open();
    }
    Caveats.cautions(page, review.cautions(), voice);
    new Assumed(review, words, voice).write(page);
    return page;
  }

  private void what() {
    page.paragraph(SAYINGS.say("what", "design", review.designTitle(), "site", review.title()));
  }

  private void failing() {
    List<Block.Item> items =
        review.failing().stream()
            .map(each -> new Block.Item(Sentence.capital(each.role()), line.failing(each)))
            .toList();
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("fails.heading")).items(items);
    }
  }

  private void limits(String heading, Kind kind) {
    List<Block.Item> items = review.limits(kind).stream().map(this::limit).toList();
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say(heading)).items(items);
    }
  }

  private Block.Item limit(Shortfall limit) {
    return new Block.Item(
        Sentence.capital(voice.label(limit.question())),
        SAYINGS.say(
            "found", "found", found(limit), "why", Sourced.sentence(voice, limit.reason())));
  }

  /** As fine as it takes to tell it from the limit it does not meet. */
  private String found(Shortfall limit) {
    String found = voice.say(limit.question(), limit.found());
    return limit.found() instanceof Outcome.Amount amount
        ? bound(limit.reason().finding())
            .map(bound -> new Measure(bound, amount.measure().unit()))
            .filter(bound -> voice.say(bound).equals(found))
            .map(bound -> voice.apart(amount.measure(), bound).get(0))
            .orElse(found)
        : found;
  }

  private static Optional<Double> bound(Finding finding) {
    if (finding instanceof Finding.AtLeast least) {
      return Optional.of(least.number());
    }
    return finding instanceof Finding.AtMost most ? Optional.of(most.number()) : Optional.empty();
  }

  private void all() {
    boolean beside = review.checkLimits().record().isPresent();
    Predicate<Checked> measured =
        each -> voice.prescribed(each.id()) && !review.failing().contains(each);
    page.heading(SAYINGS.say("checks.heading"))
        .add(grid(review.checks().stream().filter(measured.negate()).toList(), beside));
    List<Checked> prescribed = review.checks().stream().filter(measured).toList();
    if (!prescribed.isEmpty()) {
      page.heading(SAYINGS.say("prescribed.heading")).add(grid(prescribed, beside));
    }
    if (beside) {
      Map<String, String> blanks =
          new HashMap<>(Standing.blanks(review.checkLimits().record().get(), voice));
      blanks.put("design", review.baseTitle());
      page.paragraph(SAYINGS.say("base", blanks));
      RecordWords.sentences(review.checkLimits().record().get().events())
          .ifPresent(page::paragraph);
    }
  }

  private Block grid(List<Checked> checks, boolean beside) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        row(
            beside,
            SAYINGS.say("column.used"),
            SAYINGS.say("column.base"),
            SAYINGS.say("column.check"),
            SAYINGS.say("column.needs"),
            SAYINGS.say("column.has")));
    for (Checked each : checks) {
      rows.add(
          row(
              beside,
              line.used(each),
              line.base(each),
              line.name(each),
              line.asked(each),
              line.there(each)));
    }
    return new Block.Grid(rows);
  }

  private static List<String> row(boolean beside, String used, String base, String... rest) {
    List<String> row = new ArrayList<>(List.of(used));
    if (beside) {
      row.add(base);
    }
    row.addAll(List.of(rest));
    return row;
  }

  /** What a structure needs and the file does not hold. */
  private void open() {
    List<Block.Item> items = new ArrayList<>();
    for (String group : List.of("side-panels", "braces")) {
      if (review.unsaid().contains(group)) {
        items.add(
            new Block.Item(
                SAYINGS.say("open." + group), SAYINGS.say("open", "design", review.baseTitle())));
      }
    }
    for (Decision decision : review.decisions()) {
      if (!words.subjects().row(decision.question()).given()) {
        items.add(open(decision));
      }
    }
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("open.heading")).items(items);
    }
  }

  private Block.Item open(Decision decision) {
    return new Block.Item(
        Sentence.capital(voice.label(decision.question())),
        SAYINGS.say(
            "found.open",
            "found",
            voice.say(decision.question(), decision.proposed()),
            "why",
            Sourced.sentence(voice, decision.governing(), decision)));
  }
}
