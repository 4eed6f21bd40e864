package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.tables.Tables;

class ListedBaysTest {
  private static final Vocabulary WORDS = Vocabulary.of(Tables.load());

  private static final String BASE =
      """
      title: Gate
      posts: { size: 4x4, row-spacing: 60 in, %s, height: 90 in, embedment: 30 in, footing: embedded }
      headers: { style: on-top, size: 4x6, notch: 0 in, overhang: 12 in }
      crossbeams: { size: 2x6, count: 7, notch: 0.5 in, overhang: 12 in }
      """;

  private static BaseDesign base(String bays) {
    SourceText text = new SourceText("base.yaml", 1, BASE.formatted(bays), Example.folder("good"));
    return new DesignReader(WORDS).read(text).design();
  }

  private static Site.Walkway walk(String keys) {
    String site =
        """
        title: Past the gate
        base: base/gate-arbour.yaml
        site:
          climate: { frost-depth: 42 in, ground-snow: 30 psf, wind-speed: 115 mph }
        walkway:
          %s
        """
            .formatted(keys.replace("; ", "\n  "));
    return new SiteReader(WORDS)
        .read(new SourceText("site.yaml", 1, site, Example.folder("good")), List.of())
        .site()
        .walkway();
  }

  @Test
  void bays_told_one_by_one_say_how_long_the_walk_is() {
    Site.Walkway walk = walk("bays: [5 ft, 7 ft, 1.5 m]");

    assertThat(walk.bays()).hasValue(3);
    assertThat(walk.baysIn()).hasSize(3).startsWith(60.0, 84.0);
    assertThat(walk.lengthIn()).isEqualTo(60 + 84 + 1500 / 25.4);
  }

  @Test
  void words_with_commas_are_a_list_of_bays() {
    assertThat(walk("bays: 5 ft, 7 ft, 5 ft").baysIn()).containsExactly(60.0, 84.0, 60.0);
  }

  @Test
  void bays_that_are_all_as_long_are_as_many_equal_ones() {
    Site.Walkway walk = walk("bays: [5 ft, 60 in, 5 ft]");

    assertThat(walk.divided()).hasValueSatisfying(bays -> assertThat(bays.even()).isTrue());
  }

  @Test
  void a_length_beside_them_has_to_agree() {
    assertThat(walk("length: 17 ft; bays: [5 ft, 7 ft, 5 ft]").lengthIn()).isEqualTo(204);
    assertThat(refusal("length: 18 ft; bays: [5 ft, 7 ft, 5 ft]"))
        .contains("walkway.length: 18 ft must be 17'-0\"")
        .contains("Maybe 17'-0\"?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bays: [5 ft, 7, 5 ft]     | walkway.bays[1]: 7",
        "bays: [5 ft, gate, 5 ft]  | walkway.bays[1]: gate",
        "bays: [5 ft, 2 in]        | walkway.bays[1]: 2 in must be from 12",
        "bays: []                  | walkway.bays: 0 bays must be a list of 1 to 16 bays",
        "length: 9 ft; bays: three | walkway.bays: three must be a whole number",
      })
  void a_bay_that_is_no_length_is_refused_by_its_place(String keys, String said) {
    assertThat(refusal(keys.strip())).contains(said.strip());
  }

  /** What bays that cannot be read yet would say is not asked for besides. */
  @Test
  void bays_that_cannot_be_read_leave_no_length_missing() {
    assertThat(refusal("bays: [5 ft, gate]")).contains("walkway.bays[1]").doesNotContain("missing");
  }

  private static String refusal(String keys) {
    return catchThrowableOfType(IntakeException.class, () -> walk(keys)).getMessage();
  }

  @Test
  void a_base_may_have_them_too_and_is_written_as_it_was_read() {
    BaseDesign read = base("bays: [46 in, 62.5 in, 46 in]");

    assertThat(read.posts().bays()).isEqualTo(3);
    assertThat(read.posts().bayIn()).isEqualTo(62.5);
    assertThat(DesignWriter.yaml(read)).doesNotContain("bay:");
    SourceText again =
        new SourceText("again.yaml", 1, DesignWriter.yaml(read), Example.folder("good"));
    assertThat(new DesignReader(WORDS).read(again).design()).isEqualTo(read);
    SourceText json = new SourceText("a.json", 1, DesignWriter.json(read), Example.folder("good"));
    assertThat(new DesignReader(WORDS).read(json).design()).isEqualTo(read);
  }

  @Test
  void of_a_base_the_bay_beside_them_is_the_longest() {
    assertThat(base("bay: 62.5 in, bays: [46 in, 62.5 in]").posts().along().overallIn())
        .isEqualTo(108.5);
    assertThat(
            catchThrowableOfType(
                    IntakeException.class, () -> base("bay: 46 in, bays: [46 in, 62.5 in]"))
                .getMessage())
        .contains("posts.bay: 46 in must be 5'-2 1/2\", as the longest of the bays");
  }
}
