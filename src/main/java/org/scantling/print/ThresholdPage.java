package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;
import org.scantling.reasons.Thresholds;
import org.scantling.sayings.Sayings;
import org.scantling.words.SubjectRow;

/** How far each choice holds: by subject, then how far a structure goes at all. */
final class ThresholdPage {
  private static final Sayings SAYINGS = Sayings.of("thresholds");

  private static final int MOST_STRETCHES = 6;

  private final Told told;
  private final Thresholds thresholds;
  private final boolean asked;
  private final ThresholdSentences sentences;
  private final ReachSentences ends;
  private final List<String> along = new ArrayList<>();
  private final List<String> unmoved = new ArrayList<>();

  /**
   * @param asked true where somebody asked for just these choices: then each is told in full
   */
  ThresholdPage(Told told, Thresholds thresholds, boolean asked) {
    this.told = told;
    this.thresholds = thresholds;
    this.asked = asked;
    this.sentences = new ThresholdSentences(told.words(), told.voice(), asked);
    this.ends = new ReachSentences(told.words(), told.voice());
  }

  Page page() {
    Page page = new Page().title(SAYINGS.say("title"));
    if (thresholds.today().result() instanceof NeedsEngineer refused) {
      none(page, refused);
    } else {
      questions().forEach(question -> subject(page, question));
      others(page);
      if (!asked) {
        ends(page);
      }
    }
    return page.heading(SAYINGS.say("searched.heading")).paragraph(searched());
  }

  /** In the order of a report. */
  private List<Question> questions() {
    return told.words().subjects().rows().stream()
        .map(SubjectRow::question)
        .filter(thresholds.questions()::contains)
        .toList();
  }

  private void subject(Page page, Question question) {
    List<Block.Item> items = new ArrayList<>();
    for (Reach reach : thresholds.reaches()) {
      items.addAll(items(question, reach));
    }
    Choice today = Choice.of(thresholds.today(), question);
    boolean chief = told.words().choices().find(question).orElseThrow().chief();
    if (items.isEmpty()) {
      if (today instanceof Choice.Made) {
        unmoved.add(sentences.noun(question));
      }
    } else if (chief || asked) {
      page.heading(sentences.heading(question, today)).items(items);
    } else {
      along.add(sentences.noun(question));
    }
  }

  private void others(Page page) {
    List<String> said = new ArrayList<>();
    if (!along.isEmpty()) {
      said.add(SAYINGS.say("along", "choices", Sentence.capital(Sentence.list(along))));
    }
    if (!unmoved.isEmpty()) {
      said.add(SAYINGS.say("unmoved", "choices", Sentence.list(unmoved)));
    }
    if (!said.isEmpty()) {
      page.heading(SAYINGS.say(along.isEmpty() ? "unmoved.heading" : "along.heading"));
      said.forEach(page::paragraph);
    }
  }

  private List<Block.Item> items(Question question, Reach reach) {
    List<String> said = new ArrayList<>();
    Map<String, List<Threshold>> words = new LinkedHashMap<>();
    for (Threshold point : reach.points()) {
      if (point.question() != question || point.there().refused()) {
        continue;
      }
      if (point.at() instanceof Outcome.Amount) {
        said.add(sentences.number(point));
      } else {
        words.computeIfAbsent(key(point), each -> new ArrayList<>()).add(point);
      }
    }
    if (words.size() > 1 && question.numeric() && !asked) {
      said.add(sentences.groups(List.copyOf(words.values())));
    } else {
      words.values().forEach(alike -> said.add(sentences.alike(alike)));
    }
    List<Stretch> stretches = reach.mixed().getOrDefault(question, List.of());
    if (!stretches.isEmpty() && stretches.size() <= MOST_STRETCHES) {
      said.add(sentences.mixed(reach, question, stretches));
    } else if (!stretches.isEmpty()) {
      said.add(sentences.comesBack(question));
    }
    return said.stream().map(each -> new Block.Item("", each)).toList();
  }

  private static String key(Threshold point) {
    return point.there() instanceof Choice.Made made
        ? made.decision().proposed().toString()
        : point.there().getClass().getName();
  }

  private void ends(Page page) {
    List<Block.Item> items = new ArrayList<>();
    for (Reach reach : thresholds.reaches()) {
      reach.ends().forEach(end -> items.add(new Block.Item("", ends.end(reach, end))));
    }
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("ends.heading")).items(items);
    }
  }

  private void none(Page page, NeedsEngineer refused) {
    page.paragraph(SAYINGS.say("none", "why", Stopped.sentences(told.voice(), refused)));
    List<Block.Item> items = new ArrayList<>();
    for (Reach reach : thresholds.reaches()) {
      reach.ends().forEach(end -> items.add(new Block.Item("", ends.begins(reach, end))));
    }
    if (items.isEmpty()) {
      page.paragraph(SAYINGS.say("none.possible"));
    } else {
      page.heading(SAYINGS.say("possible.heading")).items(items);
    }
  }

  private String searched() {
    List<String> numbers = new ArrayList<>();
    List<String> kinds = new ArrayList<>();
    for (Reach reach : thresholds.reaches()) {
      if (reach.least() instanceof Outcome.Word) {
        kinds.add(told.voice().path(reach.demand().path()));
      } else {
        numbers.add(ends.searched(reach));
      }
    }
    return SAYINGS.say(
        "searched", "numbers", String.join("; ", numbers), "kinds", Sentence.list(kinds));
  }
}
