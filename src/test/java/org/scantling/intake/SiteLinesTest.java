package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.tables.Tables;

class SiteLinesTest {
  private static final String NAME = "sites";
  private static final Path BASES = Path.of("scenarios", "base").toAbsolutePath();
  private static final String BASE = "rose-gate.yaml";
  private static final SiteReader READER = new SiteReader(Vocabulary.of(Tables.load()));

  private static final String HEADING =
      "id,title,base,site.climate.hardiness-zone,site.soil,site.slope,walkway.length,walkway.bays,"
          + "walkway.users,planting,materials.grade,preferences.footing";
  private static final String ROW =
      "7,Lane,rose-gate.yaml,5,sand,3 %,5'-8 1/2\",2,\"two-abreast, wheelbarrow\",wisteria,#2,";
  private static final String SAME =
      """
      {"id": 7, "title": "Lane", "base": "rose-gate.yaml",
       "site": {"climate": {"hardiness-zone": 5}, "soil": "sand", "slope": "3 %"},
       "walkway": {"length": "5'-8 1/2\\"", "bays": 2, "users": ["two-abreast", "wheelbarrow"]},
       "planting": [{"vine": "wisteria"}], "materials": {"grade": "#2"}}
      """
          .replace("\n", " ");

  @Test
  void a_row_of_a_table_says_the_same_as_an_object() {
    SiteLine row = table(HEADING).read(2, ROW);
    SiteLine object = json(List.of()).read(2, SAME);

    assertThat(row.id()).contains(new SiteLine.Id("7", true)).isEqualTo(object.id());
    assertThat(read(row)).isEqualTo(read(object));
    assertThat(read(row).site().walkway().lengthIn()).isEqualTo(68.5);
    assertThat(read(row).site().walkway().users()).hasSize(2);
  }

  @Test
  void a_cell_may_hold_a_list_or_a_group_and_a_column_a_place_in_a_list() {
    String heading = "title,base,site.climate,walkway.length,walkway.users[0].machine-width";
    String row = "Lane,rose-gate.yaml,\"{ hardiness-zone: 5 }\",\"12 ft\",46 in";
    String bays = "title,base,site.climate.hardiness-zone,walkway.bays";

    assertThat(read(table(heading).read(2, row)).site().walkway().users()).hasSize(1);
    assertThat(
            read(table(bays).read(2, "Lane,rose-gate.yaml,5,\"[5 ft, 7 ft]\""))
                .site()
                .walkway()
                .lengthIn())
        .isEqualTo(144);
  }

  @Test
  void a_title_of_figures_is_a_title() {
    String heading = "title,base,site.climate.hardiness-zone,walkway.length";

    assertThat(read(table(heading).read(2, "1204,rose-gate.yaml,5,12 ft")).site().title())
        .isEqualTo("1204");
  }

  @Test
  void a_site_without_a_base_takes_the_one_that_all_share_and_no_other_does() {
    String without = SAME.replace("\"base\": \"rose-gate.yaml\",", "");

    assertThat(read(json(List.of("hop-walk.yaml")).read(1, without)).baseFile())
        .isEqualTo("hop-walk.yaml");
    assertThat(read(json(List.of("hop-walk.yaml")).read(1, SAME)).baseFile()).isEqualTo(BASE);
    assertThat(READER.readEach(json(List.of("hop-walk.yaml", BASE)).read(1, without), List.of()))
        .hasSize(2);
    assertThatThrownBy(() -> read(json(List.of()).read(1, without)))
        .hasMessageContaining("base: (missing");
  }

  @Test
  void what_is_wrong_is_told_with_the_line_of_the_file() {
    assertThatThrownBy(() -> read(json(List.of()).read(31, SAME.replace("sand", "sond"))))
        .isInstanceOf(IntakeException.class)
        .hasMessageStartingWith("sites:31: site.soil: sond must be one of ")
        .hasMessageEndingWith("Maybe sand?");
    assertThatThrownBy(() -> read(table(HEADING).read(32, ROW.replace("sand", "sond"))))
        .hasMessageStartingWith("sites:32: site.soil: sond must be one of ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"garbage", "[1]", "null", "\"title\"", "{\"title\": \"x\"", "{} {}"})
  void a_line_that_is_no_object_is_refused_and_nothing_else_is_said_of_it(String line) {
    SiteLine read = json(List.of(BASE)).read(5, line);

    assertThatThrownBy(() -> read(read))
        .isInstanceOfSatisfying(
            IntakeException.class, refused -> assertThat(refused.problems()).hasSize(1))
        .hasMessageStartingWith("sites:5: whole ");
    assertThat(read.id()).isEmpty();
  }

  @Test
  void a_row_must_have_the_cells_of_its_heading_and_closed_quotes() {
    assertThatThrownBy(() -> read(table(HEADING).read(3, "7,Lane")))
        .hasMessage("sites:3: whole line: (2 cells) must be 12 cells, as the heading has.");
    assertThatThrownBy(() -> read(table(HEADING).read(4, "7,\"Lane")))
        .hasMessageStartingWith("sites:4: whole line: (a quote that is not closed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"title,,base", "title,walkway..length", "title,base,title"})
  void a_heading_must_name_keys_and_each_once(String heading) {
    assertThatThrownBy(() -> table(heading))
        .isInstanceOf(IntakeException.class)
        .hasMessageStartingWith("sites:1: heading: ")
        .hasMessageContaining("must be a key of the site file");
  }

  @Test
  void a_heading_is_told_from_a_site() {
    assertThat(SiteLines.isHeading(HEADING)).isTrue();
    assertThat(SiteLines.isHeading("walkway.length,name")).isTrue();
    assertThat(SiteLines.isHeading(SAME)).isFalse();
    assertThat(SiteLines.isHeading("garbage, title")).isTrue();
    assertThat(SiteLines.isHeading("garbage")).isFalse();
    assertThat(SiteLines.isHeading("\"title")).isFalse();
  }

  private static SiteLines json(List<String> bases) {
    return SiteLines.json(NAME, BASES, bases);
  }

  private static SiteLines table(String heading) {
    return SiteLines.csv(NAME, BASES, List.of(), 1, heading);
  }

  private static Intake read(SiteLine line) {
    return READER.readEach(line, List.of()).get(0);
  }
}
