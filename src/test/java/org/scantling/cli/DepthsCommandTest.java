package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How deep the holes must be, from the command line. */
class DepthsCommandTest {
  static Stream<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void a_site_is_told_the_hole_that_its_proposal_digs_and_its_table_agrees(Path site) {
    Run proposed = Run.of("propose", site.toString(), "--format", "json");
    Run told = Run.of("depths", site.toString(), "--format", "json").endedWith(proposed.status());
    if (proposed.status() != ExitStatus.ANSWERED) {
      assertThat(json(told).at("/status").asString()).isEqualTo("needs-engineer");
      assertThat(told.err()).isNotBlank();
      return;
    }
    JsonNode proposal = json(proposed);
    JsonNode here = json(told).at("/here");

    assertThat(here.at("/depthIn").asDouble())
        .isEqualTo(proposal.at("/footings/depthIn").asDouble());
    assertThat(here.at("/diameterIn").asDouble())
        .isEqualTo(proposal.at("/footings/diameterIn").asDouble());
    assertThat(rows(told)).contains(here);
  }

  @Test
  void depths_are_rounded_as_the_timber_of_the_house_is_sold(@TempDir Path house)
      throws IOException {
    Files.writeString(house.resolve("defaults.csv"), "id,word\nmarket,metric\n");
    String said =
        Run.of("depths", "scenarios/mower-lane.yaml", "--house-rules", house.toString())
            .endedWith(ExitStatus.ANSWERED)
            .out()
            .replaceAll("\\s+", " ");

    assertThat(said).contains("rounded up to 25 mm").doesNotContain("rounded up to the inch");
  }

  @Test
  void one_hole_is_told_in_a_sentence_with_its_reason_and_without_a_table() {
    String text =
        Run.of("depths", "--post", "4x4", "--wind", "115", "--frost", "42 in", "--soil", "sand")
            .endedWith(ExitStatus.ANSWERED)
            .out();
    String said = text.replaceAll("\\s+", " ");

    assertThat(said)
        .contains("Dig the holes 4'-5\" deep and 1'-6\" wide: 4x4 posts 6'-10\" tall")
        .contains("wind 115 mph, frost 3'-6\".")
        .contains("Frost: The foot must reach the frost line at 3'-6\".")
        .contains("Call the utility locator before digging")
        .contains("Assumed")
        .doesNotContain("What the words mean");
    assertThat(text.indexOf("Dig the holes")).isLessThan(text.indexOf("Assumed"));
  }

  /**
   * By hand, IBC 2012, 1807.3.2.1, of 4x4 posts in tamped soil where the wind decides: the program
   * tells P and h; b is the diagonal of the post, S1 what the soil gives at d/3, sand 150 psf a
   * foot (Table 1806.2), doubled for isolated posts (1806.3.4).
   *
   * <pre>
   * A = 2.34 P/(S1 b), d = 0.5 A (1 + sqrt(1 + 4.36 h/A)), S1 = 2 x 150 x d/3
   * </pre>
   *
   * Tried from d = 3 ft on, each d put into S1 again: it comes to the same within a few steps.
   */
  @Test
  void a_hole_against_the_wind_is_as_deep_as_the_formula_of_the_code_has_it_by_hand() {
    String said =
        Run.of("depths", "--post", "4x4", "--wind", "90 mph", "--frost", "0 in", "--soil", "sand")
            .endedWith(ExitStatus.ANSWERED)
            .out()
            .replaceAll("\\s+", " ");

    // "wind pushes 85 lb at 4'-3 1/4" up, over 4 15/16" of soil, the diagonal of the post":
    // 3.5 in x sqrt 2 = 4.95 in = 0.4125 ft.
    assertThat(said).contains("wind pushes 85 lb at 4'-3 1/4\" up, over 4 15/16\" of soil");
    double pushLb = 85;
    double heightFt = (4 * 12 + 3 + 1.0 / 4) / 12;
    double widthFt = 3.5 * Math.sqrt(2) / 12;
    double depthFt = 3;
    for (int step = 0; step < 50; step++) {
      double s1Psf = 2 * 150 * depthFt / 3;
      double a = 2.34 * pushLb / (s1Psf * widthFt);
      depthFt = 0.5 * a * (1 + Math.sqrt(1 + 4.36 * heightFt / a));
    }

    // 85 lb is told to the pound: half a pound of it is a tenth of an inch of depth.
    assertThat(12 * depthFt).isCloseTo(40.56, within(0.15));
    assertThat(said).contains("Dig the holes 3'-5\" deep");
  }

  /** IBC 2012, 1809.5: the foot goes to the frost line, to the inch. */
  @Test
  void where_frost_goes_deepest_the_hole_goes_to_the_frost_line() {
    Run run =
        Run.of(
            "depths", "--post", "6x6", "--wind", "90 mph", "--frost", "47 in", "--format", "json");

    assertThat(json(run).at("/rows/0/depthIn").asDouble()).isEqualTo(47);
    assertThat(json(run).at("/rows/0/governs").asString()).isEqualTo("footings.depth.frost");
  }

  @Test
  void the_table_has_every_combination_of_its_lists_and_the_keys_of_the_contract() {
    Run run =
        Run.of(
                "depths",
                "--post",
                "4x4,6x6",
                "--fill",
                "gravel,concrete",
                "--wind",
                "90,110 mph",
                "--frost",
                "0 in,3 ft",
                "--format",
                "json")
            .endedWith(ExitStatus.ANSWERED);

    assertThat(json(run).at("/schema").asString()).isEqualTo("scantling/depths/1");
    assertThat(json(run).at("/assumptions/exposure").asString()).isEqualTo("B");
    assertThat(rows(run))
        .hasSize(16)
        .allSatisfy(
            row ->
                assertThat(row.propertyNames())
                    .contains("post", "fill", "soil", "bayIn", "heightIn", "windSpeedMph")
                    .contains("frostDepthIn", "depthIn", "governs"));
  }

  @Test
  void more_wind_frost_or_height_never_makes_a_hole_shallower_in_the_plain_table() {
    List<JsonNode> rows =
        rows(
            Run.of(
                "depths",
                "--height",
                "6 ft,6.5 ft,82 in",
                "--wind",
                "75,90,105,120,135 mph",
                "--frost",
                "0 in,20 in,40 in,60 in",
                "--format",
                "json"));
    for (JsonNode less : rows) {
      for (JsonNode more : rows) {
        if (asksMore(more, less)) {
          assertThat(depthIn(more))
              .as("%s than %s", more, less)
              .isGreaterThanOrEqualTo(depthIn(less));
        }
      }
    }
  }

  @Test
  void a_post_that_is_too_weak_is_told_as_such_and_is_a_case_for_somebody_else() {
    Run run =
        Run.of(
                "depths",
                "--post",
                "4x4",
                "--height",
                "8 ft",
                "--wind",
                "120 mph",
                "--frost",
                "0 in")
            .endedWith(ExitStatus.NEEDS_ENGINEER);

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("No hole does: 4x4 posts 8'-0\" tall and 3'-0\" apart are too weak")
        .contains("a stouter post");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--wind|400 mph|--wind: 400 mph must be from",
        "--frost|12 ft|--frost: 12 ft must be from 0 in to 120 in",
        "--height|3 in|--height: 3 in must be from 3 ft to 20 ft",
        "--bay|6|--bay: 6 (no unit) must be a length with its unit",
        "--post|5x5|--post: 5x5 must be one of",
        "--post|4x6|--post: 4x6 must be a square size, such as 4x4",
        "--soil|sandy|Maybe sand",
        "--fill|grvel|Maybe gravel",
        "--vine|thistles|--vine: thistles must be one of",
        "--exposure|E|--exposure: E must be one of B, C or D",
        "--isolated-posts|perhaps|--isolated-posts: perhaps must be"
      })
  void what_cannot_be_is_refused_by_its_option(String option, String value, String told) {
    Run run = Run.of("depths", option, value).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " ")).contains(told);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void a_table_reads_as_expected_and_fits_a_terminal_in_either_units() {
    String[] asked = {"depths", "scenarios/windy-hill.yaml"};
    for (String units : List.of("imperial", "metric")) {
      List<String> line = new ArrayList<>(Arrays.asList(asked));
      line.addAll(List.of("--units", units));
      String text = Run.of(line.toArray(String[]::new)).endedWith(ExitStatus.ANSWERED).out();
      Golden.compare("depths-" + units + ".txt", text);
      assertThat(text.lines()).allMatch(each -> each.length() <= 80);
    }
  }

  /** IRC R301.2.1.1: wood structures by these rules stop at 140 mph. */
  @Test
  void a_wind_that_the_rules_refuse_is_told_with_the_reason_and_the_others_are_answered() {
    Run table =
        Run.of("depths", "--post", "6x6", "--wind", "130 mph,150 mph")
            .endedWith(ExitStatus.ANSWERED);
    assertThat(table.out().replaceAll("\\s+", " "))
        .contains("none: refused", "150 mph of wind is more than these rules cover");
    Run one =
        Run.of("depths", "--post", "6x6", "--wind", "150 mph", "--frost", "0 in")
            .endedWith(ExitStatus.NEEDS_ENGINEER);
    assertThat(one.out().replaceAll("\\s+", " "))
        .contains("No depth can be given for this place. 150 mph of wind")
        .doesNotContain("too weak", "Dig the holes");
  }

  @Test
  void where_nothing_asks_for_more_the_least_depth_of_the_trade_governs_the_plain_walk() {
    JsonNode row =
        rows(Run.of(
                "depths",
                "--post",
                "6x6",
                "--soil",
                "bedrock",
                "--fill",
                "concrete",
                "--wind",
                "75 mph",
                "--frost",
                "0 in",
                "--format",
                "json"))
            .get(0);

    assertThat(row.at("/depthIn").asDouble()).isEqualTo(30);
    assertThat(row.at("/governs").asString()).isEqualTo("footings.depth.least");
  }

  @Test
  void what_stands_on_piers_is_not_filled() {
    assertThat(
            Run.of("depths", "scenarios/stone-terrace.yaml", "--fill", "gravel")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err()
                .replaceAll("\\s+", " "))
        .contains("--fill: the posts of this site stand on piers of concrete");
  }

  private static boolean asksMore(JsonNode more, JsonNode less) {
    boolean alike = more.at("/post").equals(less.at("/post"));
    boolean taller = more.at("/heightIn").asDouble() > less.at("/heightIn").asDouble();
    // A taller post weighs more, and against lift alone its weight is worth an inch of hole.
    boolean lifted = less.at("/governs").asString().equals("footings.depth.uplift");
    return alike
        && !(taller && lifted)
        && List.of("/heightIn", "/windSpeedMph", "/frostDepthIn").stream()
            .allMatch(key -> more.at(key).asDouble() >= less.at(key).asDouble());
  }

  private static double depthIn(JsonNode row) {
    return row.at("/depthIn").isNull() ? Double.POSITIVE_INFINITY : row.at("/depthIn").asDouble();
  }

  private static List<JsonNode> rows(Run run) {
    List<JsonNode> rows = new ArrayList<>();
    json(run).at("/rows").forEach(rows::add);
    return rows;
  }

  private static JsonNode json(Run run) {
    return JsonMapper.shared().readTree(run.out());
  }
}
