package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;
import org.scantling.tables.DemandRow;
import org.scantling.words.Jargon;
import org.scantling.words.Reader;
import org.scantling.words.ReadingEase;

/**
 * What a client reads is plain English: 60 or more by Flesch, each paragraph by itself and the
 * whole, and without the words of the trade.
 */
class ClientReadingTest {
  private static final double PLAIN_ENGLISH = 60;
  private static final PrintOptions PLAIN = PrintOptions.plain(UnitSystem.IMPERIAL);

  @Test
  void every_explanation_of_every_site_reads_easily() {
    SoftAssertions all = new SoftAssertions();
    for (String site : Demo.all().keySet()) {
      List<String> whole = new ArrayList<>();
      for (Question question : Question.values()) {
        List<String> paragraphs = paragraphs(why(site, question));
        paragraphs.forEach(each -> easy(all, site + " " + question.id(), each));
        whole.addAll(paragraphs);
      }
      assertThat(whole).hasSizeGreaterThan(40);
      easy(all, site, String.join("\n\n", whole));
    }
    all.assertAll();
  }

  @Test
  void every_change_that_may_be_suggested_reads_easily() {
    SoftAssertions all = new SoftAssertions();
    for (DemandRow row : Demo.words().tables().demands().rows()) {
      String text = KeepText.markdown(suggesting(row), Demo.words(), Reader.CLIENT, PLAIN);

      all.assertThat(text.replaceAll("(?m)^[#-]+ ", ""))
          .as(row.id())
          .doesNotContainPattern(Jargon.PATTERN)
          .doesNotContainPattern("(?i)\\b([a-z]+) \\1\\b");
      paragraphs(text).forEach(each -> easy(all, row.id(), each));
    }
    all.assertAll();
  }

  private static void easy(SoftAssertions all, String where, String text) {
    ReadingEase ease = ReadingEase.of(text);
    all.assertThat(ease.score())
        .as("%s: %s: %s", where, ease, text)
        .isGreaterThanOrEqualTo(PLAIN_ENGLISH);
  }

  private static String why(String site, Question question) {
    return WhyMarkdown.of(
        Demo.proposal(site),
        Demo.words(),
        Demo.words().subjects().find(question.id()),
        Optional.empty(),
        Reader.CLIENT,
        PLAIN);
  }

  /** Without headings, which are no sentences. */
  private static List<String> paragraphs(String markdown) {
    List<String> paragraphs = new ArrayList<>();
    for (String block : markdown.split("\n\n|\n(?=- )")) {
      String plain =
          block
              .replaceAll("(?m)^#+ .*$", "")
              .replaceAll("^- |\\*\\*", "")
              .replace('\n', ' ')
              .strip();
      if (!plain.isEmpty()) {
        paragraphs.add(plain);
      }
    }
    return paragraphs;
  }

  /** A change of one demand, as if it brought another site's sizes. */
  private static LeastChange suggesting(DemandRow row) {
    Proposal today = Demo.proposal("wisteria-court");
    Demand demand = Demand.of(row.id());
    Outcome from =
        row.scale()
            .<Outcome>map(scale -> new Outcome.Amount(scale.most()))
            .orElseGet(() -> new Outcome.Word(words(demand).get(0)));
    Outcome to =
        row.scale()
            .<Outcome>map(scale -> new Outcome.Amount(scale.least()))
            .orElseGet(() -> new Outcome.Word(words(demand).get(1)));
    Way way =
        new Way(
            List.of(new Change(demand, row.id(), from, to, 1, row.choice())),
            Demo.proposal("same-place"));
    return new LeastChange(
        new Wanted(Question.POST_SIZE, new Outcome.Word("4x4"), Wanted.Bound.JUST_THIS),
        today,
        false,
        List.of(way),
        List.of(way),
        List.of(new LeastChange.Searched(demand, from, to)));
  }

  private static List<String> words(Demand demand) {
    return switch (demand) {
      case VINE -> List.of("wisteria", "none");
      case SOIL -> List.of("clay", "sandy-gravel");
      case EXPOSURE -> List.of("C", "B");
      case SPECIES -> List.of("southern-pine", "redwood");
      case GRADE -> List.of("No.2", "No.1");
      case HEADER -> List.of("paired", "on-top");
      case FOOTING -> List.of("embedded", "bracket");
      case KEEP -> List.of("look", "cost");
      case BASIS -> List.of("published", "proven");
      case LARGEST_POST -> List.of("6x6", "4x4");
      case LARGEST_HEADER -> List.of("2x10", "2x8");
      case LARGEST_CROSSBEAM -> List.of("2x8", "2x6");
      default -> throw new AssertionError(demand + " is a word that this test does not know");
    };
  }
}
