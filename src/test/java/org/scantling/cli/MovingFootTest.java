package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the soil is trusted with, from the site file to the printed answer. */
class MovingFootTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final String SAME_PLACE = "scenarios/same-place.yaml";

  @Test
  void the_sway_that_is_printed_counts_the_turning_of_the_foot() {
    // Header, tails and the leafy edge of the top push with 39.48 lb 86.77 in up, post, rail,
    // pickets and leaves with 95.68 lb at half of 83 in: 7396 in-lb, so P = 0.6 · 135.16 = 81.10 lb
    // at 54.72 in. 40 in deep in soil of 24 lb/in³:
    // z0 = (40²/4 + 54.72 · 40/3)/(40/3 + 54.72/2) = 27.76 in,
    // θ = 81.10/(24 · 40² (27.76/2 − 40/3)) = 0.003864, so 0.003864 (27.76 + 83) = 0.428 in.
    // E I = 900,000 · 12.505 = 11.25 million: bending alone is 23.69 · 83²(83/3 + 3.77/2)/11.25e6 =
    // 0.4285 in and 57.41 · 83³/(8 · 11.25e6) = 0.3646 in. 102 lb on the post, 8.31 psi of the
    // 0.822 · 333,000/49.8² = 110.4 psi that buckle it, lean with that: 0.7931/(1 − 0.0753) =
    // 0.858 in. Together 1.286 in of 1.383 in, not 0.62 of it.
    JsonNode sway = check(json(SAME_PLACE), "post.drift");
    assertThat(sway.get("demand").asDouble()).isCloseTo(1.286, within(0.005));
    assertThat(sway.get("capacity").asDouble()).isCloseTo(83.0 / 60, within(0.001));
  }

  @Test
  void a_doubled_soil_value_says_how_far_the_foot_moves_and_what_does_without() {
    // 0.5 in at the ground is 0.5 (27.76 + 83)/27.76 = 1.995 in at the header.
    String sheet = text(SAME_PLACE);
    assertThat(sheet).contains("if it moved all of the 1/2\", that would be 2\",");
    assertThat(sheet).contains("site.isolated-posts=no");
    assertThat(sheet).contains("Each post stands by itself, and 1/2 in of movement");
  }

  @Test
  void posts_that_may_not_move_stand_deeper_by_the_plain_soil_value() {
    // IBC 1807.3.2.1 with S1 = 200 d/3: P = 81.10 lb, the leafy edge of the top counted,
    // h = 54.72 in = 4.56 ft, b = 0.41248 ft: at d = 3.948 ft S1 = 263.2 psf,
    // A = 2.34 · 81.10/(263.2 · 0.41248) = 1.748 ft, d = 0.874 (1 + √(1 + 4.36 · 4.56/1.748)) =
    // 3.948 ft, so they agree there: 47.38 in.
    JsonNode firm = json(SAME_PLACE, "--set", "site.isolated-posts=no");
    assertThat(firm.get("footings").get("depthIn").asDouble()).isBetween(47.0, 49.0);
    assertThat(check(firm, "footing.embedment").get("demand").asDouble())
        .isCloseTo(alone(81.10, 54.72 / 12, 4.95 / 12, 200) * 12, within(0.1));
    assertThat(text(SAME_PLACE, "--set", "site.isolated-posts=no"))
        .doesNotContain("counts the soil twice");
  }

  /** The code's formula, repeated until S1 and d agree. */
  private static double alone(double pushLb, double heightFt, double widthFt, double psfPerFt) {
    double depthFt = 3;
    for (int i = 0; i < 200; i++) {
      double a = 2.34 * pushLb / (psfPerFt * depthFt / 3 * widthFt);
      depthFt = (depthFt + 0.5 * a * (1 + Math.sqrt(1 + 4.36 * heightFt / a))) / 2;
    }
    return depthFt;
  }

  @Test
  void collars_closer_than_three_widths_are_not_trusted_twice() {
    // EP486.3: 3 · 20 in is more than the bay of 34 in.
    JsonNode proposal = json(SAME_PLACE, "--set", "preferences.footing=concrete");
    assertThat(decided(proposal, "footing", "side-hold")).isEqualTo("as-tabled");
    assertThat(decided(json(SAME_PLACE), "footing", "side-hold")).isEqualTo("doubled");
  }

  @Test
  void a_swaying_post_stands_deeper_than_the_wind_alone_would_tip_it() {
    JsonNode proposal =
        json(
            "scenarios/mower-lane.yaml",
            "--set",
            "walkway.bays=5",
            "--set",
            "materials.species=southern-pine");
    double depthIn = proposal.get("footings").get("depthIn").asDouble();
    assertThat(check(proposal, "footing.embedment").get("demand").asDouble())
        .isLessThan(depthIn - 2);
    assertThat(check(proposal, "post.drift").get("ratio").asDouble()).isBetween(0.97, 1.0);
  }

  @Test
  void solid_rock_asks_for_no_depth_of_frost() {
    // IBC 1809.5: footings on solid rock need no protection from frost.
    String site = "src/test/resources/rulecases/sites/on-rock.yaml";
    JsonNode rock =
        json(site, "--set", "site.soil=bedrock", "--set", "site.climate.frost-depth=60 in");
    assertThat(rock.get("footings").get("depthIn").asDouble()).isLessThan(60);
    JsonNode soil =
        json(site, "--set", "site.soil=foliated-rock", "--set", "site.climate.frost-depth=60 in");
    assertThat(soil.get("footings").get("depthIn").asDouble()).isGreaterThanOrEqualTo(60);
  }

  @ParameterizedTest
  @ValueSource(strings = {"western-cedars", "redwood"})
  void posts_of_a_species_that_lasts_are_bought_as_heartwood(String species) {
    String[] cedar = {"--set", "materials.species=" + species};
    String list = text(SAME_PLACE, "--set", "materials.species=" + species, "--list", "buying");
    assertThat(list).contains("heartwood").doesNotContain("UC4B").doesNotContain(", treated");
    assertThat(text(SAME_PLACE, cedar)).contains("Use heartwood without sapwood for the posts");
    assertThat(text(SAME_PLACE, "--set", "materials.species=southern-pine", "--list", "buying"))
        .contains("UC4B");
  }

  @Test
  void a_number_of_bays_that_was_asked_for_and_is_not_built_is_told() {
    // Four posts of the wisteria court over 11 ft: no header of the yard spans it.
    String court = "scenarios/wisteria-court.yaml";
    String[] one = {"--set", "walkway.length=11 ft", "--set", "walkway.bays=1"};
    assertThat(json(court, one).get("layout").get("bays").asInt()).isEqualTo(2);
    assertThat(text(court, one))
        .contains("The site file asks for 1 bay, and 2 are built: with 1 no header size passes");
    assertThat(text(court, "--set", "walkway.length=13 ft", "--set", "walkway.bays=1"))
        .contains("2 are built: nobody builds a bay of 13'-0\"");
    assertThat(text(court, "--set", "walkway.length=11 ft", "--set", "walkway.bays=2"))
        .doesNotContain("The site file asks for");
  }

  @Test
  void no_check_prints_an_amount_that_has_lost_its_meaning() {
    List<String> absurd = new ArrayList<>();
    for (String wind : List.of("115 mph", "139 mph")) {
      for (String width : List.of("5 ft", "14 ft")) {
        for (String headroom : List.of("7 ft", "11 ft")) {
          String[] sets = {
            "--set", "site.climate.wind-speed=" + wind,
            "--set", "walkway.clear-width=" + width,
            "--set", "walkway.headroom=" + headroom
          };
          String out = weak(sets);
          out.lines()
              .filter(line -> line.matches(".*(\\d{4,} %|\\b[2-9]\\d'-|\\b\\d{3,}'-|100000).*"))
              .forEach(line -> absurd.add(String.join(" ", sets) + ": " + line));
        }
      }
    }
    assertThat(absurd).isEmpty();
  }

  /** A design of sticks, on a site that is too much for it. */
  private static String weak(String... sets) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "check",
                "scenarios/windy-hill.yaml",
                "--design",
                "src/test/resources/designs/sticks.yaml"));
    args.addAll(List.of(sets));
    return Run.of(args.toArray(String[]::new)).out();
  }

  private static String decided(JsonNode proposal, String subject, String attribute) {
    for (JsonNode each : proposal.get("decisions")) {
      if (each.get("subject").asString().equals(subject)
          && each.get("attribute").asString().equals(attribute)) {
        return each.get("proposed").asString();
      }
    }
    throw new AssertionError("no decision on " + subject + "." + attribute);
  }

  private static JsonNode check(JsonNode proposal, String id) {
    for (JsonNode each : proposal.get("checks")) {
      if (each.get("id").asString().equals(id)) {
        return each;
      }
    }
    throw new AssertionError("no check " + id);
  }

  private static JsonNode json(String site, String... more) {
    List<String> args = new ArrayList<>(List.of("propose", site, "--format", "json"));
    args.addAll(List.of(more));
    return JSON.readTree(Run.of(args.toArray(String[]::new)).endedWith(0).out());
  }

  /** On one line, so that no line end stands in the way. */
  private static String text(String site, String... more) {
    List<String> args = new ArrayList<>(List.of("propose", site));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new)).endedWith(0).out().replaceAll("\\s+", " ");
  }
}
