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
    // Timber, sides and the leafy edge of the top push with 29.70 + 100.5 lb, which turn the foot
    // with 6621 in-lb: P = 0.6 · 130.2 = 78.12 lb at 50.85 in. 36 in deep in soil of 24 lb/in³:
    // z0 = (36²/4 + 50.85 · 36/3)/(36/3 + 50.85/2) = 24.96 in,
    // θ = 78.12/(24 · 36² (24.96/2 − 36/3)) = 0.00522, so 0.00522 (24.96 + 82) = 0.559 in; bending
    // alone is 0.518 in with the load that leans with it: 1.077 in of 1.367 in, not 0.38 of it.
    JsonNode sway = check(json(SAME_PLACE), "post.drift");
    assertThat(sway.get("demand").asDouble()).isCloseTo(1.077, within(0.005));
    assertThat(sway.get("capacity").asDouble()).isCloseTo(82.0 / 60, within(0.001));
  }

  @Test
  void a_doubled_soil_value_says_how_far_the_foot_moves_and_what_does_without() {
    // 0.5 in at the ground is 0.5 (24.97 + 82)/24.97 = 2.14 in at the header.
    String sheet = text(SAME_PLACE);
    assertThat(sheet).contains("if it moved all of the 1/2\", that would be 2 1/8\"");
    assertThat(sheet).contains("site.isolated-posts=no");
    assertThat(sheet).contains("Each post stands by itself, and 1/2 in of movement");
  }

  @Test
  void posts_that_may_not_move_stand_deeper_by_the_plain_soil_value() {
    // IBC 1807.3.2.1 with S1 = 200 d/3: P = 78.12 lb, the leafy edge of the top counted,
    // h = 50.85 in = 4.2377 ft, b = 0.41248 ft: at d = 3.830 ft S1 = 255.3 psf,
    // A = 2.34 · 78.12/(255.3 · 0.41248) = 1.736 ft, d = 0.868 (1 + √(1 + 4.36 · 4.2377/1.736)) =
    // 3.830 ft, so they agree there: 45.95 in.
    JsonNode firm = json(SAME_PLACE, "--set", "site.isolated-posts=no");
    assertThat(firm.get("footings").get("depthIn").asDouble()).isBetween(44.0, 47.0);
    assertThat(check(firm, "footing.embedment").get("demand").asDouble())
        .isCloseTo(alone(78.12, 50.85 / 12, 4.95 / 12, 200) * 12, within(0.1));
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
    // EP486.3: 3 · 18 in is more than the bay of 45 in.
    JsonNode proposal = json(SAME_PLACE, "--set", "preferences.footing=concrete");
    assertThat(decided(proposal, "footing", "side-hold")).isEqualTo("as-tabled");
    assertThat(decided(json(SAME_PLACE), "footing", "side-hold")).isEqualTo("doubled");
  }

  @Test
  void a_swaying_post_stands_deeper_than_the_wind_alone_would_tip_it() {
    JsonNode proposal = json("scenarios/mower-lane.yaml");
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
    assertThat(text(SAME_PLACE, "--list", "buying")).contains("UC4B");
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
