package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A fixed design on a site, from file to printed answer. */
class CheckCommandTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final String BASE = "scenarios/base/rose-gate.yaml";
  private static final String PLAIN = "src/test/resources/rulecases/sites/base/plain-gate.yaml";
  private static final String DESIGNS = "src/test/resources/designs/";

  @TempDir private Path folder;

  static List<String> proposed() throws IOException {
    return ContractTest.proposed();
  }

  @ParameterizedTest
  @MethodSource("proposed")
  void a_proposal_written_as_a_design_file_passes_as_it_was_proposed(String name)
      throws IOException {
    String site = "scenarios/" + name + ".yaml";
    Path design = folder.resolve("design.yaml");
    Files.writeString(design, ok("propose", site, "--format", "yaml"));
    JsonNode check = json(site, design.toString());
    assertThat(check.get("status").asString()).as(check.toString()).isEqualTo("passes");
    assertThat(check.get("failures")).isEmpty();
    assertThat(check.get("limits")).isEmpty();
    JsonNode proposal = JSON.readTree(ok("propose", site, "--format", "json"));
    assertThat(lines(check)).containsExactlyInAnyOrderElementsOf(lines(proposal));
    assertThat(check.get("criteria").get("windPressurePsf"))
        .isEqualTo(proposal.get("criteria").get("windPressurePsf"));
  }

  @Test
  void the_base_on_a_windy_hill_fails_in_the_ground_and_says_so_in_the_first_line() {
    Golden.compare("check-base-on-windy-hill.txt", text("windy-hill", BASE));
    Golden.compare("check-base-on-windy-hill.json", check("windy-hill", BASE, "json"));
    // 35 and three of crossbeams on their own: rolling over, bowing sideways, bending both ways.
    assertThat(text("windy-hill", BASE).lines().findFirst().orElseThrow())
        .matches("\\d+ of 38 checks fail; the worst: .*");
  }

  @Test
  void the_base_in_the_mower_lane_is_strong_enough_and_too_narrow_and_too_short() {
    String text = text("mower-lane", BASE);
    Golden.compare("check-base-in-mower-lane.txt", text);
    assertThat(text).startsWith("2 limits are not met: clear width and bay.");
  }

  @Test
  void a_sketch_is_told_what_was_taken_for_it_and_what_is_out_of_habit() {
    Golden.compare("check-sketch.txt", text("long-walk", DESIGNS + "bare-bones.yaml"));
    Golden.compare("check-sketch.json", check("long-walk", DESIGNS + "bare-bones.yaml", "json"));
  }

  @Test
  void posts_on_brackets_without_braces_are_never_said_to_stand() {
    String design = DESIGNS + "unbraced-on-brackets.yaml";
    Golden.compare("check-unbraced.txt", text("stone-terrace", design));
    JsonNode check = json("scenarios/stone-terrace.yaml", design);
    assertThat(check.get("status").asString()).isEqualTo("fails");
    assertThat(check.get("unworked").toString()).isEqualTo("[\"post\",\"brace\",\"footing\"]");
    assertThat(ids(check)).noneMatch(id -> id.startsWith("post.") || id.startsWith("footing."));
  }

  @Test
  void a_base_past_a_published_limit_passes_only_where_its_record_was_asked_to_count() {
    String site = "scenarios/proven-ground.yaml";
    String design = "scenarios/base/station-yard.yaml";
    String own = "walkway.length=3.2m";
    String counts = "preferences.basis=proven";
    String counted = ok("check", site, "--design", design, "--set", own, "--set", counts);
    Golden.compare("check-proven-ground.txt", counted);
    assertThat(counted).startsWith("All 36 checks pass, one of them only by the record");
    assertThat(ok("check", site, "--design", design, "--set", own))
        .startsWith("1 of 36 checks fails: post, sway at the header in service wind, its foot")
        .containsIgnoringWhitespaces("turning, 46 % over. One limit is not met: hole depth.");
  }

  @Test
  void no_record_excuses_what_the_wind_lifts() {
    String own = "walkway.length=54in";
    // Depth and sway its record does excuse, and where the wind lifts less, nothing else is wrong.
    assertThat(shallow(own))
        .startsWith("1 of 38 checks fails: footing, weight against uplift, 42 % over.");
    String calmer = "site.climate.wind-speed=90mph";
    assertThat(shallow(own, calmer))
        .containsIgnoringWhitespaces("All 38 checks pass, 2 of them only by the record");
    assertThat(shallow(own, calmer, "preferences.basis=published"))
        .startsWith(
            "2 of 38 checks fail; the worst: footing, depth against the sideways push, 17 %")
        .containsIgnoringWhitespaces("sway at the header in service wind, its foot turning");
  }

  /** A gate that has stood shallower than published, where its record counts. */
  private static String shallow(String... sets) {
    String sites = "src/test/resources/rulecases/sites/";
    List<String> args = new ArrayList<>(List.of("check", sites + "proven-ground.yaml"));
    args.addAll(List.of("--design", sites + "base/shallow-gate.yaml"));
    List.of(sets).forEach(each -> args.addAll(List.of("--set", each)));
    return ok(args.toArray(String[]::new));
  }

  @Test
  void a_site_that_the_rules_refuse_is_refused_for_a_fixed_design_too() {
    Run run =
        Run.of("check", "scenarios/too-much-snow.yaml", "--design", BASE)
            .endedWith(ExitStatus.NEEDS_ENGINEER);
    assertThat(run.out()).startsWith("This is a case for a licensed engineer.");
    JsonNode check =
        JSON.readTree(
            Run.of("check", "scenarios/too-much-snow.yaml", "--design", BASE, "--format", "json")
                .endedWith(ExitStatus.NEEDS_ENGINEER)
                .out());
    assertThat(check.get("status").asString()).isEqualTo("needs-engineer");
    assertThat(check.get("broken").get("demand").asString()).isEqualTo("site.climate.ground-snow");
    assertThat(check.get("checks")).isEmpty();
  }

  @Test
  void the_same_options_hold_as_for_a_proposal() throws IOException {
    assertThat(ok("check", "scenarios/windy-hill.yaml", "--design", BASE, "--units", "metric"))
        .contains(" mm", " kPa")
        .doesNotContain("'-");
    assertThat(check("windy-hill", BASE, "markdown")).contains("## What fails", "| used | base |");
    assertThat(
            ok(
                "check",
                "scenarios/windy-hill.yaml",
                "--design",
                BASE,
                "--set",
                "site.climate.wind-speed=105mph",
                "--set",
                "site.climate.exposure=B",
                "--set",
                "walkway.length=34in"))
        .startsWith("All 38 checks pass;");
    // 2.1 x 83 in over 3 1/2 in is 49.8, of 0.9 x 50 = 45 that the house allows.
    Files.writeString(folder.resolve("checks.csv"), "id,limit_ratio\npost.slenderness,0.9\n");
    assertThat(
            ok(
                "check",
                "scenarios/same-place.yaml",
                "--design",
                BASE,
                "--house-rules",
                folder.toString()))
        .startsWith("1 of 38 checks fails: post, effective height over width, not over 50, 11 %");
  }

  @Test
  void what_cannot_be_built_is_refused_with_each_slip_on_its_line() {
    Run run =
        Run.of("check", "scenarios/same-place.yaml", "--design", DESIGNS + "cannot-be-built.yaml")
            .endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().replace(DESIGNS, ""))
        .isEqualToNormalizingWhitespace(
            """
            cannot-be-built.yaml:3: posts.size: 4x6 must be a square size, such as 4x4.
            cannot-be-built.yaml:8: posts.embedment: 0" must be more than nothing, for posts in the ground.
            cannot-be-built.yaml:13: crossbeams.count: 90 must be few enough that a gap is left between them.
            cannot-be-built.yaml:15: crossbeams.notch: 3 1/2" must be less than 3 1/2", as a 2x4 is deep.
            cannot-be-built.yaml:16: side-panels.pickets: 40 must be few enough to leave gaps in the 3'-5 1/2" between two posts, each 1 1/2" wide.
            cannot-be-built.yaml:16: side-panels.rail-height: 7'-6" must be less than 6'-10", the height of the posts.
            """);
  }

  @Test
  void a_grade_that_the_site_asks_of_the_posts_holds_in_a_design_with_timber_of_its_own()
      throws IOException {
    assertThat(refusedWithStoutPosts(BASE, "materials.posts.grade=No.3"))
        .containsIgnoringWhitespaces(
            "posts.size: 6x6 must be a size that has design values in western-cedars No.3, the"
                + " timber of the site.");
  }

  @Test
  void timber_without_design_values_is_refused_with_the_line_of_its_size() throws IOException {
    // A grade for the whole would be bettered for the posts alone; one for the posts is kept to.
    assertThat(
            refusedWithStoutPosts(
                PLAIN, "materials.species=southern-pine", "materials.posts.grade=No.3"))
        .containsIgnoringWhitespaces(
            "stout.yaml:9: posts.size: 6x6 must be a size that has design values in southern-pine"
                + " No.3, the timber of the site.");
  }

  private String refusedWithStoutPosts(String base, String... settings) throws IOException {
    Path design = folder.resolve("stout.yaml");
    Files.writeString(design, Files.readString(Path.of(base)).replace("size: 4x4", "size: 6x6"));
    List<String> line =
        new ArrayList<>(
            List.of("check", "scenarios/same-place.yaml", "--design", design.toString()));
    for (String setting : settings) {
      line.addAll(List.of("--set", setting));
    }
    return Run.of(line.toArray(String[]::new)).endedWith(ExitStatus.WRONG_INPUT).err();
  }

  @Test
  void nothing_is_wider_than_a_terminal() {
    for (String site : List.of("windy-hill", "mower-lane", "metric-country", "stone-terrace")) {
      assertThat(text(site, BASE).lines()).allMatch(line -> line.length() <= 80);
    }
  }

  private static String text(String site, String design) {
    return check(site, design, "text");
  }

  private static String check(String site, String design, String format) {
    return ok("check", "scenarios/" + site + ".yaml", "--design", design, "--format", format);
  }

  private static JsonNode json(String site, String design) {
    return JSON.readTree(ok("check", site, "--design", design, "--format", "json"));
  }

  private static String ok(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out();
  }

  private static List<String> ids(JsonNode answer) {
    List<String> ids = new ArrayList<>();
    answer.get("checks").forEach(each -> ids.add(each.get("id").asString()));
    return ids;
  }

  private static List<String> lines(JsonNode answer) {
    List<String> lines = new ArrayList<>();
    answer.get("checks").forEach(each -> lines.add(each.toString()));
    return lines;
  }
}
