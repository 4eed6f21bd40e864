package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.tables.Tables;

class PieceLengthsTest {
  private static final DesignReader READER = new DesignReader(Vocabulary.of(Tables.load()));

  private static String base(String style, String post, String header, String beam) {
    return """
        title: Gate
        posts: { size: 4x4, row-spacing: 60 in, bay: 46 in, bays: 2, height: 90 in, footing: embedded, %s }
        headers: { style: %s, size: 4x6, notch: 0 in, %s }
        crossbeams: { size: 2x6, count: 7, notch: 0.5 in, %s }
        """
        .formatted(post, style, header, beam);
  }

  private static BaseDesign read(String text) {
    return READER.read(new SourceText("base.yaml", 1, text, Example.folder("good"))).design();
  }

  private static String refusal(String text) {
    return catchThrowableOfType(IntakeException.class, () -> read(text)).getMessage();
  }

  /** By hand: 2 bays of 46 in and a post of 3 1/2 in are 95 1/2 in, so 10 ft leaves 12 1/4 in. */
  @Test
  void the_length_of_a_header_tells_its_overhang() {
    BaseDesign read = read(base("on-top", "embedment: 30 in", "length: 10 ft", "overhang: 12 in"));

    assertThat(read.headers().overhangIn()).isEqualTo(12.25);
    assertThat(DesignWriter.yaml(read)).contains("overhang: 12.25 in").doesNotContain("length");
  }

  /** By hand: rows 60 in apart under headers of 3 1/2 in: 8 ft leaves (96 - 63.5) / 2 in. */
  @Test
  void the_length_of_a_crossbeam_tells_its_overhang() {
    assertThat(
            read(base("on-top", "embedment: 30 in", "overhang: 12 in", "length: 8 ft"))
                .crossbeams()
                .overhangIn())
        .isEqualTo(16.25);
  }

  /** By hand: boards of 3 1/2 in on both sides of a post of 3 1/2 in: (96 - 60 - 10.5) / 2 in. */
  @Test
  void over_a_pair_of_boards_it_is_told_from_their_outer_faces() {
    assertThat(
            read(base("paired", "embedment: 30 in", "overhang: 12 in", "length: 8 ft"))
                .crossbeams()
                .overhangIn())
        .isEqualTo(12.75);
  }

  @Test
  void the_length_of_a_post_and_its_height_tell_how_deep_it_stands() {
    assertThat(
            read(base("on-top", "length: 10 ft", "overhang: 12 in", "overhang: 12 in"))
                .posts()
                .embedmentIn())
        .isEqualTo(30);
  }

  @Test
  void both_may_be_given_where_they_agree_to_a_sixteenth() {
    String agree = "overhang: 12 3/16 in, length: 10 ft";
    String apart = "overhang: 12 1/8 in, length: 10 ft";

    assertThat(
            read(base("on-top", "embedment: 30 in", agree, "overhang: 12 in"))
                .headers()
                .overhangIn())
        .isEqualTo(12.1875);
    assertThat(refusal(base("on-top", "embedment: 30 in", apart, "overhang: 12 in")))
        .isEqualTo(
            "base.yaml:3: headers.overhang: 12 1/8 in (beside a length of 10 ft) must be 12 1/4 in,"
                + " what the length leaves, or one of the two left out. Maybe 12 1/4 in?");
  }

  @Test
  void a_piece_that_is_too_short_is_refused_with_what_it_must_reach_over() {
    assertThat(refusal(base("on-top", "embedment: 30 in", "length: 7 ft", "overhang: 12 in")))
        .contains("headers.length: 7 ft must be 7'-11 1/2\" or longer");
  }

  @Test
  void one_of_the_two_has_to_be_given() {
    assertThat(refusal(base("on-top", "embedment: 30 in", "size: 4x6", "overhang: 12 in")))
        .contains("given twice");
    assertThat(refusal(base("on-top", "embedment: 30 in", "overhang: 12 in", "at-posts: single")))
        .contains("crossbeams.overhang: (missing: overhang, or the length of the piece)");
  }

  @Property(tries = 50)
  void the_overhang_that_is_written_back_gives_the_length_again(
      @ForAll @IntRange(min = 97 * 16, max = 200 * 16) int sixteenths) {
    double lengthIn = sixteenths / 16.0;
    BaseDesign read =
        read(base("on-top", "embedment: 30 in", "length: " + lengthIn + " in", "overhang: 12 in"));
    BaseDesign again = read(DesignWriter.yaml(read));

    assertThat(again).isEqualTo(read);
    assertThat(2 * 46 + 3.5 + 2 * again.headers().overhangIn()).isEqualTo(lengthIn);
  }
}
