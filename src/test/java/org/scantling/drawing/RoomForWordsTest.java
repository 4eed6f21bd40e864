package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.UnitSystem;
import org.w3c.dom.Element;

/** No word lies on another or on a line, and none runs off the sheet. */
class RoomForWordsTest {
  static Stream<String> jobs() {
    return Job.all().stream();
  }

  /** A word with the room that it takes, measured rather too wide. */
  private record Word(String words, PaperBox box) {}

  @ParameterizedTest
  @MethodSource("jobs")
  void every_word_has_its_own_room(String job) {
    List<String> found = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      for (Picture picture : Job.of(job).pictures(units)) {
        crowded(picture).forEach(each -> found.add(picture.name() + " " + units + ": " + each));
      }
    }

    assertThat(found).isEmpty();
  }

  static List<String> crowded(Picture picture) {
    List<String> found = new ArrayList<>();
    List<Word> words = picture.elements("text").stream().map(RoomForWordsTest::word).toList();
    PaperBox sheet =
        new PaperBox(
            0,
            0,
            Picture.number(picture.root(), "width"),
            Picture.number(picture.root(), "height"));
    for (int i = 0; i < words.size(); i++) {
      Word word = words.get(i);
      for (Word other : words.subList(i + 1, words.size())) {
        if (word.box().meets(other.box())) {
          found.add("'" + word.words() + "' on '" + other.words() + "'");
        }
      }
      for (Picture.Stroke stroke : picture.strokes()) {
        if (word.box()
            .meets(
                new PaperPoint(stroke.fromX(), stroke.fromY()),
                new PaperPoint(stroke.toX(), stroke.toY()))) {
          found.add("a line through '" + word.words() + "'");
        }
      }
      if (!sheet.with(word.box()).equals(sheet)) {
        found.add("'" + word.words() + "' off the sheet");
      }
    }
    return found;
  }

  private static Word word(Element text) {
    Lettering lettering =
        Stream.of(Lettering.values())
            .filter(each -> each.word().equals(text.getAttribute("class")))
            .findFirst()
            .orElseThrow();
    Anchor anchor =
        Stream.of(Anchor.values())
            .filter(each -> each.word().equals(text.getAttribute("text-anchor")))
            .findFirst()
            .orElseThrow();
    PaperPoint at = new PaperPoint(Picture.number(text, "x"), Picture.number(text, "y"));
    Ink.Letters letters =
        new Ink.Letters(
            text.getTextContent(), lettering, at, anchor, text.hasAttribute("transform"));
    return new Word(letters.words(), letters.box());
  }

  @Test
  void a_word_that_lies_on_a_line_is_found() {
    String crowded =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100\" height=\"40\">"
            + "<path d=\"M0 20 L100 20\"/>"
            + "<text class=\"note\" x=\"5\" y=\"22\" text-anchor=\"start\">gate</text>"
            + "<text class=\"note\" x=\"20\" y=\"30\" text-anchor=\"start\">walk</text>"
            + "<text class=\"note\" x=\"90\" y=\"38\" text-anchor=\"start\">pond</text></svg>";

    assertThat(crowded(Picture.read("crowded", crowded)))
        .containsExactly(
            "'gate' on 'walk'",
            "a line through 'gate'",
            "a line through 'walk'",
            "'pond' off the sheet");
  }

  @Test
  void a_title_of_any_length_stays_on_its_sheet() {
    String title = "Walk ".repeat(20) + "W".repeat(100);
    Job longest = Job.of("same-place", "title=" + title);

    for (Picture each : longest.pictures(UnitSystem.IMPERIAL)) {
      assertThat(crowded(each)).as(each.name()).isEmpty();
    }
  }
}
