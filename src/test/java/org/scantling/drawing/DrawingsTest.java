package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.shop.Piece;

/** What is drawn of every kind of walk, read back from the files. */
class DrawingsTest {
  static Stream<String> jobs() {
    return Job.all().stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_drawing_is_a_picture_that_stands_by_itself_and_says_what_it_shows(String job) {
    List<Picture> pictures = Job.of(job).pictures(UnitSystem.IMPERIAL);

    assertThat(pictures)
        .extracting(Picture::name)
        .startsWith("set-out.svg", "side.svg", "end.svg", "canopy.svg", "then-and-now.svg");
    assertThat(pictures.stream().map(Picture::name).skip(5))
        .containsExactlyElementsOf(details(Job.of(job)));
    for (Picture each : pictures) {
      assertThat(each.elements("title").get(0).getTextContent())
          .startsWith(Job.of(job).proposal().title() + ": ");
      assertThat(each.says()).endsWith(".").hasSizeGreaterThan(60).doesNotContain("{", "}");
      assertThat(each.root().getAttribute("aria-labelledby"))
          .isEqualTo(
              each.elements("title").get(0).getAttribute("id")
                  + " "
                  + each.elements("desc").get(0).getAttribute("id"));
      assertThat(each.elements("script")).isEmpty();
      assertThat(each.elements("image")).isEmpty();
      assertThat(each.elements("use")).isEmpty();
    }
  }

  /** What is drawn larger: only what there is. */
  private static List<String> details(Job job) {
    List<String> details = new ArrayList<>(List.of("detail-seat.svg", "detail-header.svg"));
    if (job.structure().headers().pieces(false).size() > 1 && !job.structure().top().stepped()) {
      details.add("detail-splice.svg");
    }
    if (job.structure().braces().isPresent()) {
      details.add("detail-brace-across.svg");
      details.add("detail-brace-along.svg");
    }
    if (!job.lists().pieces().of("rail").isEmpty()) {
      details.add("detail-rail.svg");
    }
    details.add("detail-footing.svg");
    return details;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_colour_is_a_token_with_a_light_and_a_dark_value(String job) {
    Job.of(job)
        .drawings(UnitSystem.IMPERIAL)
        .forEach(
            (name, text) -> {
              String style = text.substring(text.indexOf("<style>"), text.indexOf("</style>"));
              assertThat(text.replace(style, ""))
                  .as(name)
                  .doesNotContain("style=", "fill=", "stroke=", "rgb(");
              assertThat(style.split("--frost:", -1)).hasSize(4);
              assertThat(style.lines().filter(line -> !line.contains("--paper:")))
                  .noneMatch(line -> line.matches(".*#[0-9a-f]{3,6}.*"));
            });
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_piece_of_the_top_is_drawn_from_above_and_every_stake_is_named(String job) {
    Job drawn = Job.of(job);
    Picture canopy = drawn.picture("canopy.svg", UnitSystem.IMPERIAL);
    Picture setOut = drawn.picture("set-out.svg", UnitSystem.IMPERIAL);
    boolean broken = canopy.says().contains("left out");

    for (String role : List.of("crossbeam", "header", "blocking")) {
      for (Piece piece : drawn.lists().pieces().of(role)) {
        long count = drawnAs(canopy, piece.mark());
        assertThat(count > 0 && (broken || count == piece.count()))
            .as(piece.mark() + " is drawn " + count + " times")
            .isTrue();
      }
    }
    Set<String> named = new TreeSet<>(setOut.words());
    long stakes =
        drawn.lists().setOut().posts().stream().filter(post -> named.contains(post.name())).count();
    assertThat(stakes).isEqualTo(setOut.elements("circle").size()).isGreaterThanOrEqualTo(4);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_post_that_is_drawn_from_the_side_has_its_name_and_its_mark(String job) {
    Picture side = Job.of(job).picture("side.svg", UnitSystem.IMPERIAL);
    long posts =
        side.elements("path").stream()
            .filter(path -> path.getAttribute("data-mark").startsWith("P"))
            .count();

    assertThat(side.words().stream().filter(word -> word.matches("A\\d+"))).hasSize((int) posts);
    assertThat(side.words().stream().filter(word -> word.matches("P\\d+"))).hasSize((int) posts);
  }

  private static long drawnAs(Picture picture, String mark) {
    return picture.elements("path").stream()
        .filter(path -> path.getAttribute("data-mark").equals(mark))
        .count();
  }

  @Test
  void what_grew_is_drawn_heavier_and_said_and_nothing_else_is() {
    Picture grown = Job.of("mower-lane").picture("then-and-now.svg", UnitSystem.IMPERIAL);
    Picture same = Job.of("same-place").picture("then-and-now.svg", UnitSystem.IMPERIAL);

    assertThat(heavier(grown)).containsExactly("C", "H", "P");
    assertThat(grown.says()).contains("posts, 6x6 where the base has 4x4");
    assertThat(grown.words()).contains("larger: posts, headers, crossbeams");
    assertThat(heavier(same)).isEmpty();
    assertThat(grown.says()).contains("The posts stand 3'-6\" in the ground");
    assertThat(same.says()).doesNotContain("The posts stand");
    assertThat(Job.of("deep-frost").picture("then-and-now.svg", UnitSystem.IMPERIAL).says())
        .contains("No timber is larger", "The posts stand 5'-0\" in the ground");
    assertThat(same.says()).contains("No timber is larger than that of the base.");
  }

  /**
   * The middle piece begins and ends where nothing is drawn; its length would be read of the last.
   */
  @Test
  void a_length_that_has_no_room_on_its_own_line_is_not_written_over_the_next() {
    String side =
        Job.of("everything-at-once").picture("side.svg", UnitSystem.IMPERIAL).words().toString();

    assertThat(side).contains("H1  16'-1 3/4\"", "H3  11'-3 1/16\"").doesNotContain("H2");
  }

  private static Set<String> heavier(Picture picture) {
    return picture.elements("path").stream()
        .filter(path -> path.getAttribute("class").equals("grown-timber grown"))
        .map(path -> path.getAttribute("data-mark").substring(0, 1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void rock_that_holes_stop_on_is_drawn_and_named_and_no_bed_is() {
    Picture side = Job.of("ledge-walk").picture("side.svg", UnitSystem.IMPERIAL);

    assertThat(side.words()).contains("solid rock 3'-8\"");
    assertThat(side.says()).contains("and stop on the solid rock").doesNotContain("bed");
    assertThat(Job.of("ledge-walk").picture("end.svg", UnitSystem.IMPERIAL).words())
        .contains("solid rock 3'-8\"");
  }

  @Test
  void the_end_tells_how_much_lower_the_second_row_stands() {
    assertThat(Job.of("bank-of-roses").picture("end.svg", UnitSystem.IMPERIAL).says())
        .contains("The ground along row B lies 8\" lower than along row A.");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void the_frost_line_has_its_word_wherever_it_is_drawn(String job) {
    for (Picture each : Job.of(job).pictures(UnitSystem.IMPERIAL)) {
      boolean line =
          each.elements("path").stream()
              .map(path -> path.getAttribute("class"))
              .anyMatch("clear frost"::equals);
      assertThat(each.words().stream().anyMatch(word -> word.startsWith("frost ")))
          .as(each.name())
          .isEqualTo(line);
    }
  }

  @Test
  void a_person_stands_in_the_way_and_a_machine_has_its_width() {
    Picture mower = Job.of("mower-lane").picture("end.svg", UnitSystem.IMPERIAL);

    assertThat(mower.words()).contains("machine 6'-0\"", "clear 6'-10\"");
    assertThat(mower.says()).contains("The person is 5'-8\" tall.");
    double headPx =
        mower.elements("circle").stream()
            .mapToDouble(head -> Picture.number(head, "r"))
            .max()
            .orElseThrow();
    assertThat(headPx / mower.pxPerInch()).isBetween(3.5, 5.0);
  }

  @Test
  void in_millimeters_no_figure_has_a_fraction_and_the_sheet_says_what_they_are() {
    for (Picture each : Job.of("metric-country").pictures(UnitSystem.METRIC)) {
      assertThat(each.words())
          .as(each.name())
          .contains(
              "All figures are in millimeters.",
              each.name().startsWith("detail") ? "150 mm" : "2 m");
      assertThat(each.dimensions())
          .as(each.name())
          .isNotEmpty()
          .allMatch(one -> one.words().matches("([a-z]+ |[A-Z]\\d+ {2})?\\d+"));
    }
  }

  @Test
  void a_hostile_title_is_only_text() {
    String title = "</title><script>alert('x')</script> \"R&D\" ]]> &amp; <!--";
    Job hostile = Job.of("same-place", "title=\"" + title.replace("\"", "\\\"") + "\"");

    hostile
        .drawings(UnitSystem.IMPERIAL)
        .forEach(
            (name, text) -> {
              Picture picture = Picture.read(name, text);
              assertThat(text).as(name).doesNotContain("<script", "<!--", "]]>");
              assertThat(picture.elements("script")).isEmpty();
              assertThat(picture.elements("title")).hasSize(1);
              assertThat(picture.elements("title").get(0).getTextContent())
                  .contains("</title><script>alert('x')</script> \"R&D\" ]]> &amp;");
            });
  }

  @Test
  void what_xml_has_no_sign_for_is_left_out() {
    assertThat(Xml.escaped("a\u0000b\uFFFE<c d='e'>\uD800 \uD83C\uDF39"))
        .isEqualTo("ab&lt;c d=&#39;e&#39;&gt; \uD83C\uDF39");
  }

  @Test
  void a_drawing_is_the_same_however_often_it_is_made() {
    Job job = Job.of("mower-lane");

    assertThat(job.drawn(UnitSystem.IMPERIAL)).isEqualTo(job.drawings(UnitSystem.IMPERIAL));
  }
}
