package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;

class SiteReaderTest {
  @Test
  void the_example_of_the_contract_is_read_whole() {
    Intake intake = Example.read("orchard-walk.yaml");
    Site site = intake.site();
    assertThat(site.title()).isEqualTo("Long walk to the lower orchard");
    assertThat(site.climate())
        .isEqualTo(
            new Site.Climate(
                OptionalDouble.of(42),
                OptionalDouble.of(30),
                OptionalDouble.of(115),
                Optional.of("B"),
                OptionalDouble.of(5),
                OptionalDouble.empty(),
                OptionalDouble.empty()));
    assertThat(site.ground()).isEqualTo(new Site.Ground(Optional.of("sandy-gravel"), 3));
    assertThat(site.walkway().lengthIn()).isEqualTo(288);
    assertThat(site.walkway().clearWidthIn()).hasValue(72);
    assertThat(site.walkway().headroomIn()).hasValue(84);
    assertThat(site.walkway().users())
        .containsExactly(
            new Site.User.Known("two-abreast"),
            new Site.User.Known("wheelbarrow"),
            new Site.User.Machine(46));
    assertThat(site.planting()).containsExactly(new Site.Planting("wisteria"));
    assertThat(site.materials())
        .isEqualTo(new Site.Materials(Optional.of("southern-pine"), Optional.of("No.2")));
    assertThat(site.preferences())
        .isEqualTo(
            new Site.Preferences(
                "embedded", "auto", "look", "published", "code", "I", "open", "auto"));
  }

  @Test
  void the_same_site_is_read_over_each_of_several_bases_in_their_order() {
    List<Intake> each =
        new SiteReader(Example.VOCABULARY).readEach(Example.good("two-bases.yaml"), List.of());

    assertThat(each)
        .extracting(Intake::baseFile)
        .containsExactly("base/gate-arbour.yaml", "base/metric-bower.yaml");
    assertThat(each)
        .extracting(intake -> intake.site().base().title())
        .doesNotHaveDuplicates()
        .first()
        .isEqualTo("Gate arbour");
    assertThat(each).extracting(intake -> intake.site().walkway().lengthIn()).containsOnly(288.0);
    assertThat(each.get(0).choice()).isEmpty();
  }

  @Test
  void one_base_reads_alike_by_itself_and_as_one_of_several() {
    Setting alone = Setting.parse("base=base/metric-bower.yaml");
    Intake second =
        new SiteReader(Example.VOCABULARY)
            .readEach(Example.good("two-bases.yaml"), List.of())
            .get(1);

    assertThat(second.site()).isEqualTo(Example.read("two-bases.yaml", alone).site());
    assertThat(second.defaulted()).isEqualTo(Example.read("two-bases.yaml", alone).defaulted());
  }

  @Test
  void a_setting_may_name_one_base_or_several() {
    SiteReader reader = new SiteReader(Example.VOCABULARY);
    Setting both = Setting.parse("base=[base/metric-bower.yaml,base/gate-arbour.yaml]");
    Setting one = Setting.parse("base=base/gate-arbour.yaml");

    assertThat(reader.readEach(Example.good("least.yaml"), List.of(both)))
        .extracting(Intake::baseFile)
        .containsExactly("base/metric-bower.yaml", "base/gate-arbour.yaml");
    assertThat(reader.readEach(Example.good("two-bases.yaml"), List.of(one)))
        .extracting(Intake::baseFile)
        .containsExactly("base/gate-arbour.yaml");
  }

  @Test
  void a_list_of_one_base_names_one() {
    Setting listed = Setting.parse("base=[base/gate-arbour.yaml]");

    assertThat(Example.read("least.yaml", listed).site())
        .isEqualTo(Example.read("least.yaml", Setting.parse("base=base/gate-arbour.yaml")).site());
  }

  @Test
  void a_base_is_one_base_whichever_way_leads_to_it() {
    String folder = Example.good("base/gate-arbour.yaml").toString();
    Setting twice = Setting.parse("base=[base/gate-arbour.yaml," + folder + "]");

    assertThatThrownBy(() -> Example.read("least.yaml", twice))
        .isInstanceOf(IntakeException.class)
        .hasMessageContaining("base[1]")
        .hasMessageContaining("each base is named once");
  }

  @Test
  void more_bases_than_anybody_waits_for_are_refused() {
    Setting seven = Setting.parse("base=[a.yaml,b.yaml,c.yaml,d.yaml,e.yaml,f.yaml,g.yaml]");

    assertThatThrownBy(() -> Example.read("least.yaml", seven))
        .hasMessageContaining("7 paths must be a list of 1 to 6 paths");
  }

  @Test
  void wind_snow_and_a_hill_are_read_as_canadian_tables_and_surveys_give_them() {
    Intake intake = Example.read("ferry-bluff.yaml");
    Site.Weather weather = intake.site().climate().weather();
    // 1 kPa is 20.885 psf.
    assertThat(weather.hourlyPressurePsf().orElseThrow()).isCloseTo(7.519, within(1e-3));
    assertThat(weather.snow().orElseThrow().groundPsf()).isCloseTo(39.68, within(0.01));
    assertThat(weather.snow().orElseThrow().rainPsf()).isCloseTo(8.354, within(1e-3));
    assertThat(weather.roofLivePsf()).hasValue(20);
    assertThat(weather.hill()).contains(new Site.Hill("ridge", 480, 1800, 0));
    assertThat(weather.gusts()).isTrue();
    assertThat(intake.defaulted())
        .doesNotContain("site.climate.wind-speed", "site.climate.ground-snow", "site.hill");
  }

  @Test
  void the_base_design_of_the_contract_is_read_whole() {
    BaseDesign base = Example.read("orchard-walk.yaml").site().base();
    assertThat(base.proven())
        .contains(
            new BaseDesign.Proven(
                2011,
                new Site.Climate(
                    OptionalDouble.of(40),
                    OptionalDouble.of(25),
                    OptionalDouble.of(110),
                    Optional.of("B"),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()),
                Optional.empty(),
                Optional.of("honeysuckle")));
    assertThat(base.posts())
        .isEqualTo(
            new BaseDesign.Posts(
                "4x4", 74, 46, 1, 90, 30, "embedded", Optional.empty(), OptionalDouble.empty()));
    assertThat(base.headers()).isEqualTo(new BaseDesign.Headers("on-top", "4x4", 13, 0.5));
    assertThat(base.crossbeams())
        .isEqualTo(
            new BaseDesign.Crossbeams(
                "2x4", 6, 12, 0.5, Optional.of(new BaseDesign.EndCut("curve", 2, 3))));
    assertThat(base.sidePanels()).contains(new BaseDesign.SidePanels("4x4", 24, 3));
    assertThat(base.braces()).isEmpty();
  }

  @Test
  void the_shortest_file_leaves_everything_else_open_and_says_so() {
    Intake intake = Example.read("least.yaml");
    Site site = intake.site();
    assertThat(site.climate().hardinessZone()).hasValue(5.5);
    assertThat(site.climate().frostDepthIn()).isEmpty();
    assertThat(site.walkway().clearWidthIn()).isEmpty();
    assertThat(site.walkway().users()).isEmpty();
    assertThat(site.planting()).isEmpty();
    assertThat(site.materials().species()).isEmpty();
    assertThat(site.ground()).isEqualTo(new Site.Ground(Optional.empty(), 0));
    assertThat(site.preferences())
        .isEqualTo(
            new Site.Preferences("auto", "auto", "look", "published", "code", "I", "open", "auto"));
    assertThat(intake.defaulted())
        .containsExactly(
            "site.climate.frost-depth",
            "site.climate.ground-snow",
            "site.climate.wind-speed",
            "site.climate.wind-basis",
            "site.climate.exposure",
            "site.climate.roof-live",
            "site.climate.air-freezing-index",
            "site.climate.mean-annual-temperature",
            "site.soil",
            "site.slope",
            "site.cross-slope",
            "site.rock-at",
            "site.hill",
            "site.isolated-posts",
            "walkway.bays",
            "walkway.clear-width",
            "walkway.users",
            "walkway.headroom",
            "walkway.no-post",
            "planting",
            "materials.species",
            "materials.grade",
            "materials.market",
            "preferences.footing",
            "preferences.header",
            "preferences.keep",
            "preferences.basis",
            "preferences.embedment-basis",
            "preferences.risk-category",
            "preferences.snow-share",
            "preferences.crossbeams-at-posts",
            "base.proven.climate.frost-depth",
            "base.proven.climate.ground-snow",
            "base.proven.climate.wind-speed",
            "base.proven.climate.exposure",
            "base.proven.slope",
            "base.crossbeams.end-cut");
  }

  @Test
  void metric_json_is_converted_and_its_text_is_kept() {
    Intake intake = Example.read("metric.json");
    Site site = intake.site();
    assertThat(site.walkway().lengthIn()).isEqualTo(7200 / 25.4, within(1e-9));
    assertThat(site.walkway().clearWidthIn().orElseThrow()).isEqualTo(1800 / 25.4, within(1e-9));
    assertThat(site.climate().freezingIndexFDays()).hasValue(1494);
    assertThat(site.climate().meanAnnualF().orElseThrow()).isEqualTo(44.6, within(1e-9));
    assertThat(site.climate().windSpeedMph().orElseThrow()).isEqualTo(114.08, within(0.005));
    assertThat(site.climate().groundSnowPsf().orElseThrow()).isEqualTo(29.24, within(0.005));
    assertThat(site.preferences())
        .isEqualTo(
            new Site.Preferences(
                "bracket", "paired", "cost", "proven", "experience", "II", "full", "auto"));
    assertThat(site.planting()).extracting(Site.Planting::vine).containsExactly("grape", "none");
    assertThat(intake.originalText())
        .containsEntry("walkway.length", "7.2 m")
        .containsEntry("planting[1].vine", "none")
        .containsEntry("base.posts.row-spacing", "74 in");
  }

  @Test
  void trade_fractions_are_read_without_quotes() {
    Site.Walkway walkway = Example.read("trade-fractions.yaml").site().walkway();
    assertThat(walkway.clearWidthIn()).hasValue(68.5);
    assertThat(walkway.headroomIn()).hasValue(85.25);
    assertThat(walkway.users()).contains(new Site.User.Machine(46.375));
  }

  @Test
  void a_braced_metric_base_is_read_whole() {
    BaseDesign base =
        new DesignReader(Example.VOCABULARY).read(Example.good("base/metric-bower.yaml")).design();
    assertThat(base.braces()).contains(new BaseDesign.Braces("4x4", 24));
    assertThat(base.sidePanels()).isEmpty();
    assertThat(base.crossbeams().endCut()).isEmpty();
    assertThat(base.posts().backfill()).contains("concrete");
    assertThat(base.posts().holeDiameterIn().orElseThrow()).isEqualTo(400 / 25.4, within(1e-9));
    assertThat(base.proven().orElseThrow().soil()).contains("clay");
  }

  @Test
  void a_line_of_a_batch_is_read_from_its_text() {
    String line =
        "{\"title\":\"t\",\"base\":\"base/gate-arbour.yaml\",\"site\":{\"climate\":"
            + "{\"hardiness-zone\":5}},\"walkway\":{\"length\":\"24 ft\"}}";
    SourceText source = new SourceText("sites.jsonl", 7, line, Example.folder("good"));
    assertThat(new SiteReader(Example.VOCABULARY).read(source, List.of()).site().title())
        .isEqualTo("t");
  }

  @Test
  void every_good_file_is_read() throws Exception {
    try (var files = Files.list(Example.folder("good"))) {
      assertThat(files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()))
          .hasSizeGreaterThan(3)
          .allSatisfy(name -> assertThat(Example.read(name).site().title()).isNotBlank());
    }
  }
}
