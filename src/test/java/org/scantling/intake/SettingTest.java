package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.Site;

class SettingTest {
  @Test
  void a_setting_replaces_the_value_of_the_file_and_its_original_text() {
    Intake intake = Example.read("orchard-walk.yaml", Setting.parse("walkway.length=32ft"));
    assertThat(intake.site().walkway().lengthIn()).isEqualTo(384);
    assertThat(intake.site().walkway().clearWidthIn()).hasValue(72);
    assertThat(intake.originalText()).containsEntry("walkway.length", "32ft");
  }

  @Test
  void a_setting_may_name_what_the_file_leaves_out() {
    Intake intake =
        Example.read(
            "least.yaml",
            Setting.parse("walkway.clear-width = 5'-8 1/2\""),
            Setting.parse("preferences.snow-share=full"),
            Setting.parse("materials.grade=No.1"));
    assertThat(intake.site().walkway().clearWidthIn()).hasValue(68.5);
    assertThat(intake.site().preferences().snowShare()).isEqualTo("full");
    assertThat(intake.site().materials().grade()).contains("No.1");
    assertThat(intake.defaulted())
        .doesNotContain("walkway.clear-width", "preferences.snow-share", "materials.grade")
        .contains("materials.species");
  }

  @Test
  void lists_and_groups_can_be_set_whole_or_by_place() {
    Site site =
        Example.read(
                "orchard-walk.yaml",
                Setting.parse("walkway.users=[wheelchair, { machine-width: 1.2 m }]"),
                Setting.parse("walkway.users[0]=wheelbarrow"),
                Setting.parse("planting[1].vine=grape"),
                Setting.parse("site.climate={ hardiness-zone: 6a }"))
            .site();
    assertThat(site.walkway().users())
        .containsExactly(new Site.User.Known("wheelbarrow"), new Site.User.Machine(1200 / 25.4));
    assertThat(site.planting())
        .extracting(Site.Planting::vine)
        .containsExactly("wisteria", "grape");
    assertThat(site.climate().hardinessZone()).hasValue(6);
    assertThat(site.climate().groundSnowPsf()).isEmpty();
  }

  @Test
  void of_two_settings_of_one_value_the_later_holds() {
    Intake intake =
        Example.read(
            "least.yaml",
            Setting.parse("walkway.length=32ft"),
            Setting.parse("walkway.length=40ft"));
    assertThat(intake.site().walkway().lengthIn()).isEqualTo(480);
  }

  @Test
  void another_base_can_be_set() {
    Intake intake = Example.read("least.yaml", Setting.parse("base=base/gate-arbour.yaml"));
    assertThat(intake.site().base().title()).isEqualTo("Gate arbour");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "walkway.lenght=32ft | --set walkway.lenght: walkway.lenght: key lenght (unknown) must be"
            + " one of length, bays, clear-width, users, headroom or no-post. Maybe length?",
        "walkwy.length=32ft | --set walkwy.length: walkwy: key walkwy (unknown) must be one of"
            + " title, base, site, walkway, planting, materials or preferences. Maybe walkway?",
        "walkway.length=32 | --set walkway.length: walkway.length: 32 (no unit) must be a length"
            + " with its unit, such as 6 ft, 5'-8 1/2\", 42 in, 1.8 m or 450 mm. Maybe 32 ft, 32"
            + " in or 32 m?",
        "walkway.length=-12 ft | --set walkway.length: walkway.length: -12 ft must be from 2 ft to"
            + " 400 ft.",
        "walkway.length= | --set walkway.length: walkway.length: (empty) must be a length with its"
            + " unit, such as 6 ft, 5'-8 1/2\", 42 in, 1.8 m or 450 mm.",
        "site.soil=sandy gravle | --set site.soil: site.soil: sandy gravle must be one of bedrock,"
            + " clay, foliated-rock, sand or sandy-gravel. Maybe sandy-gravel?",
        "title.part=x | --set title.part: title: (a group of keys: part) must be text.",
        "planting=[ { vine: grape } | --set planting: planting: (not YAML: a list [ is not closed"
            + " with ]) must be well-formed YAML. Maybe `[ { vine: grape }]`?",
        "planting=[ { vine: grape, vine: none } ] | --set planting: planting: key vine (given"
            + " twice) must be given once. It stands on line 1 already.",
        "planting[7].vine=grape | --set planting[7].vine: planting[7].vine: place [7] of a list of"
            + " 1 must be from [0] to [1].",
        "walkway..length=3 ft | --set walkway..length: path: walkway..length must be a path such"
            + " as walkway.length.",
        "planting=&a [ { vine: grape } ] | --set planting: planting: (a YAML anchor or alias) must be written out in full,"
            + " without & or *.",
        "walkway.users[0].machine-width=2 psf | --set walkway.users[0].machine-width:"
            + " walkway.users[0].machine-width: 2 psf (wrong kind of unit: this is a load) must be"
            + " a length with its unit, such as 6 ft, 5'-8 1/2\", 42 in, 1.8 m or 450 mm.",
        "base=~/gate-arbour.yaml | --set base: base: ~/gate-arbour.yaml must be a path with"
            + " forward slashes, written out without ~.",
      })
  void a_wrong_setting_is_named_as_the_option(String option, String told) {
    assertThatThrownBy(() -> Example.read("orchard-walk.yaml", Setting.parse(option)))
        .isInstanceOf(IntakeException.class)
        .hasMessage(told);
  }

  @ParameterizedTest
  @CsvSource({"walkway.length", "=32ft", "''"})
  void a_setting_without_a_path_or_a_value_is_refused(String option) {
    assertThatThrownBy(() -> Setting.parse(option))
        .isInstanceOf(IntakeException.class)
        .hasMessageEndingWith("must be path=value. For example --set walkway.length=32ft.");
  }

  @Test
  void problems_of_settings_and_files_are_reported_together() {
    assertThatThrownBy(
            () ->
                new SiteReader(Example.VOCABULARY)
                    .read(
                        Example.folder("malformed").resolve("negative.yaml"),
                        Arrays.asList(Setting.parse("walkway.headroom=7"))))
        .isInstanceOfSatisfying(
            IntakeException.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(Problem::field)
                    .containsExactly("site.slope", "walkway.length", "walkway.headroom"));
  }
}
