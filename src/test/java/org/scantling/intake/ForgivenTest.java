package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.tables.SynonymRow;
import org.scantling.tables.Tables;

/** What is clear is read, however it is written, and is written back as the files have it. */
class ForgivenTest {
  private static final Tables TABLES = Tables.load();
  private static final Vocabulary VOCABULARY = Vocabulary.of(TABLES);
  private static final String SITE =
      """
      title: Long walk
      base: base/gate-arbour.yaml
      site:
        climate: { frost-depth: 42 in, ground-snow: 30 psf, wind-speed: 115 mph, exposure: B }
        soil: sandy-gravel
        slope: 3 %
      walkway:
        length: 24 ft
        users: [ two-abreast ]
      planting: [ { vine: wisteria } ]
      materials: { species: southern-pine, grade: No.2 }
      """;
  private static final String BASE =
      """
      title: Gate
      posts: { size: 4x4, row-spacing: 60 in, bay: 46 in, bays: 2, height: 90 in, embedment: 30 in, footing: embedded }
      headers: { style: on-top, size: 4x6, overhang: 12 in, notch: 0 in }
      crossbeams: { size: 2x6, count: 7, overhang: 12 in, notch: 0.5 in }
      """;

  private static Intake site(String right, String written) {
    assertThat(SITE).contains(right);
    String text = SITE.replace(right, written);
    return new SiteReader(VOCABULARY)
        .read(new SourceText("site.yaml", 1, text, Example.folder("good")), List.of());
  }

  private static DesignIntake design(String right, String written) {
    assertThat(BASE).contains(right);
    return new DesignReader(VOCABULARY)
        .read(new SourceText("base.yaml", 1, BASE.replace(right, written), Example.folder("good")));
  }

  @ParameterizedTest
  @CsvSource({
    "loam, clay",
    "Silt, clay",
    "sandy loam, sand",
    "silty gravel, sand",
    "gravel, sandy-gravel",
    "Sandy Gravel, sandy-gravel",
    "ledge, foliated-rock",
    "granite, bedrock",
    "CLAY, clay"
  })
  void a_soil_is_read_by_what_the_code_classes_it_as(String written, String soil) {
    // IBC Table 1806.2: class 5 is clay, sandy clay, silty clay, clayey silt, silt and sandy silt.
    assertThat(site("soil: sandy-gravel", "soil: " + written).site().ground().soil())
        .hasValue(soil);
  }

  @Test
  void what_a_reading_takes_for_granted_is_named_for_the_answer() {
    assertThat(site("soil: sandy-gravel", "soil: Loam").defaulted()).contains("site.soil=Loam");
    assertThat(site("soil: sandy-gravel", "soil: silty clay").defaulted())
        .noneMatch(path -> path.contains("="));
    assertThat(site("southern-pine", "cedar").defaulted()).contains("materials.species=cedar");
    assertThat(site("vine: wisteria", "vine: English ivy").defaulted())
        .contains("planting[0].vine=English ivy");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "planting: wisteria | wisteria",
        "planting: Wisteria | wisteria",
        "planting: [ wisteria ] | wisteria",
        "planting: { vine: trumpet vine } | trumpet-creeper",
        "planting: wisteria and grape | wisteria,grape",
        "planting: wisteria, roses | wisteria,climbing-rose",
        "planting: [ Virginia creeper ] | grape",
        "planting: none | none",
      })
  void climbers_are_read_with_or_without_their_list(String written, String vines) {
    assertThat(
            site("planting: [ { vine: wisteria } ]", written).site().planting().stream()
                .map(Site.Planting::vine))
        .containsExactly(vines.split(","));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "users: wheelbarrow | 1",
        "users: two people | 1",
        "users: wheelbarrow, stroller | 2",
        "users: { machine-width: 46 in } | 1",
        "users: [ riding mower, one ] | 2",
      })
  void whoever_passes_is_read_with_or_without_the_list(String written, int count) {
    assertThat(site("users: [ two-abreast ]", written).site().walkway().users()).hasSize(count);
  }

  @ParameterizedTest
  @CsvSource({
    "one, 1",
    "two, 2",
    "three, 3",
    "four, 4",
    "five, 5",
    "six, 6",
    "seven, 7",
    "eight, 8",
    "nine, 9",
    "ten, 10",
    "eleven, 11",
    "twelve, 12"
  })
  void a_count_in_a_word_is_offered_as_its_figure(String written, int count) {
    assertThatThrownBy(() -> design("count: 7", "count: " + written))
        .hasMessageContaining("Maybe " + count + "?");
  }

  @ParameterizedTest
  @CsvSource({"1:12, 8.333", "1 in 12, 8.333", "1/4 in per ft, 2.083", "level, 0", "2 percent, 2"})
  void a_fall_is_read_as_it_is_spoken(String written, double percent) {
    assertThat(site("slope: 3 %", "slope: " + written).site().ground().slopePercent())
        .isCloseTo(percent, org.assertj.core.api.Assertions.within(1e-3));
  }

  @ParameterizedTest
  @CsvSource({"4 x 4", "'4\"x4\"'", "4X4", "4\u00d74", "4 by 4", "4 x 4s"})
  void a_size_is_read_as_the_yard_writes_it(String written) {
    DesignIntake read = design("size: 4x4", "size: '" + written + "'");

    assertThat(read.design().posts().size()).isEqualTo("4x4");
    assertThat(DesignWriter.yaml(read.design())).contains("size: 4x4");
  }

  @ParameterizedTest
  @CsvSource({
    "no. 2, No.2",
    "'''#2''', No.2",
    "No 2, No.2",
    "2, No.2",
    "select structural, Select-Structural"
  })
  void a_grade_is_read_as_the_stamp_has_it(String written, String grade) {
    assertThat(site("grade: No.2", "grade: " + written).site().materials().grade()).hasValue(grade);
  }

  @ParameterizedTest
  @CsvSource({
    "southern yellow pine, southern-pine", "SYP, southern-pine", "doug fir, douglas-fir-larch",
    "Douglas-Fir, douglas-fir-larch", "cedar, western-cedars", "hem fir, hem-fir",
    "SPF, spruce-pine-fir"
  })
  void a_species_is_read_as_the_yard_calls_it(String written, String species) {
    assertThat(site("southern-pine", written).site().materials().species()).hasValue(species);
  }

  @Test
  void whatever_has_a_reading_is_written_back_as_the_files_have_it() {
    for (SynonymRow row : TABLES.synonyms().rows()) {
      if (row.list().equals("style") || row.list().equals("backfill")) {
        for (String written : row.written()) {
          String text =
              row.list().equals("style")
                  ? BASE.replace("style: on-top", "style: '" + written + "'")
                  : BASE.replace(
                      "footing: embedded", "footing: embedded, backfill: '" + written + "'");
          BaseDesign design =
              new DesignReader(VOCABULARY)
                  .read(new SourceText("base.yaml", 1, text, Example.folder("good")))
                  .design();

          assertThat(DesignWriter.yaml(design))
              .as(written)
              .contains(row.list() + ": " + row.means().get(0));
        }
      }
    }
  }

  @Property(tries = 60)
  void a_reading_written_back_is_read_as_the_same(
      @ForAll @IntRange(min = 4, max = 20) int feet,
      @ForAll @IntRange(min = 0, max = 11) int inches,
      @ForAll @IntRange(min = 0, max = 6) int eighth) {
    String[] marks = {"", "\u215b", "\u00bc", "\u215c", "\u00bd", "\u215d", "\u00be"};
    String written = feet + " feet " + (inches + marks[eighth]) + " inches";
    BaseDesign read = design("bay: 46 in", "bay: " + written).design();
    BaseDesign again =
        new DesignReader(VOCABULARY)
            .read(new SourceText("b.yaml", 1, DesignWriter.yaml(read), Example.folder("good")))
            .design();

    assertThat(read.posts().bayIn()).isEqualTo(feet * 12 + inches + eighth / 8.0);
    assertThat(again).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "soil: sandy-gravel | soil: topsoil | Dig through it",
        "grade: No.2 | grade: best | must be one of",
        "users: [ two-abreast ] | users: [ mower ] | must be one of",
        "southern-pine | pine | must be one of",
      })
  void what_is_not_clear_is_asked_for(String right, String written, String told) {
    IntakeException refused =
        catchThrowableOfType(IntakeException.class, () -> site(right, written));

    assertThat(refused).hasMessageContaining(told);
  }
}
