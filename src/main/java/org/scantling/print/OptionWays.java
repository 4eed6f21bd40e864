package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Decision;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.sayings.Sayings;
import org.scantling.tables.OptionCountRow;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What each whole structure is called, and what it saves and gives up beside the proposed one. */
final class OptionWays {
  static final Sayings SAYINGS = Sayings.of("whole-options");

  /** What a client has nothing from, where it is better and where it is worse. */
  private static final Map<String, Set<OptionMeasure>> UNTOLD =
      Map.of(
          "saves.",
          Set.of(
              OptionMeasure.LOOK,
              OptionMeasure.SPARE,
              OptionMeasure.CONCEDED,
              OptionMeasure.OTHER_TIMBER),
          "gives.",
          Set.of(OptionMeasure.SPARE));

  private final WholeOptions options;
  private final Words words;
  private final Voice voice;
  private final OptionFigures figures;
  private final Sayings sayings;

  /**
   * @param sayings of the reader
   */
  OptionWays(
      WholeOptions options, Words words, Voice voice, OptionFigures figures, Sayings sayings) {
    this.options = options;
    this.words = words;
    this.voice = voice;
    this.figures = figures;
    this.sayings = sayings;
  }

  /** The rows that are told here, in their order: the cost only where there are prices. */
  List<OptionCountRow> rows() {
    boolean priced = counted(OptionMeasure.COST);
    return words.tables().optionCounts().rows().stream()
        .filter(row -> row.measure() != OptionMeasure.COST || priced)
        .toList();
  }

  boolean counted(OptionMeasure measure) {
    return options.shown().stream().anyMatch(each -> each.measures().containsKey(measure));
  }

  Optional<WholeOption> proposed() {
    return options.shown().stream().filter(WholeOption::asProposed).findFirst();
  }

  /** {@code fewest holes and least digging}; empty where it is the best at nothing. */
  List<String> best(WholeOption option) {
    return option.bestAt().stream().map(measure -> sayings.say("best." + measure.id())).toList();
  }

  /** What it is better at than the proposed one, in the order in which it counts. */
  List<String> saves(WholeOption option) {
    return beside(option, "saves.", 1);
  }

  /** What it is worse at. */
  List<String> givesUp(WholeOption option) {
    return beside(option, "gives.", -1);
  }

  private List<String> beside(WholeOption option, String saying, int way) {
    List<String> said = new ArrayList<>();
    if (proposed().isPresent() && !option.asProposed()) {
      for (OptionCountRow row : rows()) {
        OptionMeasure measure = row.measure();
        double here = option.measure(measure);
        double there = proposed().get().measure(measure);
        if (Integer.signum(row.better(here, there)) == way && told(saying, measure)) {
          said.add(apart(saying + measure.id(), measure, here, there));
        }
      }
    }
    return said;
  }

  private boolean told(String saying, OptionMeasure measure) {
    return voice.reader() != Reader.CLIENT
        || !UNTOLD.getOrDefault(saying, Set.of()).contains(measure);
  }

  private String apart(String saying, OptionMeasure measure, double here, double there) {
    if (Double.isInfinite(here) || Double.isInfinite(there)) {
      return sayings.say("unknown." + saying.replace('.', '-'));
    }
    boolean counted = measure == OptionMeasure.HOLES || measure == OptionMeasure.HOURS;
    String by = figures.apart(measure, here, there);
    return counted && by.equals("1")
        ? sayings.say("one." + saying.replace('.', '-'))
        : sayings.say(saying, "by", by);
  }

  /** The chief choices that are made otherwise than in the proposed one. */
  List<String> changes(WholeOption option) {
    List<String> said = new ArrayList<>();
    if (proposed().isPresent() && !option.asProposed()) {
      for (Question question : ChiefChoices.of(words)) {
        Optional<Outcome> before = answer(proposed().get(), question);
        Optional<Outcome> then = answer(option, question);
        if (then.isPresent() && !before.equals(then)) {
          said.add(WayWords.beside(voice, question, before, then));
        }
      }
    }
    return said;
  }

  static Optional<Outcome> answer(WholeOption option, Question question) {
    return option.proposal().decision(question).map(Decision::proposed);
  }

  /** As it is typed, one option a line, each but the last with what makes a shell read on. */
  static List<String> lines(String letter, WholeOption option) {
    List<String> typed = TypedSettings.of(option.settings());
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      String set = typed.get(i) + (i < typed.size() - 1 ? " \\" : "");
      lines.add((i == 0 ? letter : " ") + "  " + set);
    }
    return lines;
  }
}
