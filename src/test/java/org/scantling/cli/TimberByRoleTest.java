package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Species and grade of single roles: asked for, needed for a size, listed, weighed, checked. */
class TimberByRoleTest {
  private static final String LANE = "scenarios/mower-lane.yaml";
  private static final String GATE = "scenarios/same-place.yaml";

  /** Pine for the whole, where the base is of cedar. */
  private static final String PINE = "materials.species=southern-pine";

  @Test
  void posts_without_strength_in_the_grade_of_the_rest_are_bought_in_the_next_better_one() {
    // NDS Supplement, Table 4D: no values for No.3 in timbers 5 in and thicker.
    String[] third = {"propose", LANE, "--set", PINE, "--set", "materials.grade=No.3"};
    JsonNode proposal = json(third);
    assertThat(member(proposal, "post").get("size").asString()).isEqualTo("6x6");
    assertThat(member(proposal, "post").get("grade").asString()).isEqualTo("No.2");
    assertThat(member(proposal, "crossbeam").get("grade").asString()).isEqualTo("No.3");
    assertThat(text(third))
        .contains(
            "Posts of southern pine No.2; headers, crossbeams and side rails of southern pine")
        .contains(
            "Grade of the posts: No.2. No strength is published for 6x6 in southern pine No.3.");
  }

  @Test
  void a_grade_asked_for_the_posts_is_kept_to_and_never_bettered_in_silence() {
    String[] third = {"propose", GATE, "--set", PINE, "--set", "materials.posts.grade=No.3"};
    JsonNode proposal = json(third);
    assertThat(member(proposal, "post").get("grade").asString()).isEqualTo("No.3");
    Run refused =
        Run.of(
            with(
                new String[] {
                  "--set", "walkway.headroom=10 ft", "--set", "site.climate.wind-speed=130 mph"
                },
                third));
    assertThat(oneLine(refused.endedWith(ExitStatus.NEEDS_ENGINEER).out()))
        .contains("No strength is published for 6x6 in southern pine No.3")
        .contains("materials.posts.grade");
  }

  @Test
  void every_member_is_of_the_timber_that_is_asked_for_its_role() {
    JsonNode proposal =
        json(
            "propose",
            LANE,
            "--set",
            PINE,
            "--set",
            "materials.posts.grade=No.1",
            "--set",
            "materials.crossbeams.species=western-cedars");
    assertThat(timber(proposal, "post")).isEqualTo("southern-pine No.1");
    assertThat(timber(proposal, "header")).isEqualTo("southern-pine No.2");
    assertThat(timber(proposal, "crossbeam")).isEqualTo("western-cedars No.2");
  }

  @Test
  void screws_hold_as_well_as_the_wood_that_their_points_are_in() {
    // The crossbeams are screwed, since toe-nails let them roll over in the wind. NDS 2018, 12.2.2:
    // W = 2850 G² D, so the withdrawal of a wood screw goes with the square of G; G 0.36 of western
    // cedars, 0.55 of southern pine (Table 12.3.3A).
    String[] all = {"propose", LANE, "--set", PINE};
    double pine = check(json(all), "joint.crossbeam").get("capacity").asDouble();
    JsonNode cedar =
        json(with(new String[] {"--set", "materials.headers.species=western-cedars"}, all));
    assertThat(check(cedar, "joint.crossbeam").get("capacity").asDouble() / pine)
        .isCloseTo(Math.pow(0.36 / 0.55, 2), within(1e-3));
  }

  @Test
  void the_lists_say_the_timber_of_every_piece_and_weigh_it_by_its_own() {
    String[] all = {"--set", PINE, "--set", "walkway.bays=5"};
    String[] cedar = with(all, "--set", "materials.crossbeams.species=western-cedars");
    JsonNode list = json(with(cedar, "propose", LANE, "--list", "cut-list"));
    for (JsonNode piece : list.get("pieces")) {
      assertThat(piece.get("species").asString())
          .isEqualTo(
              piece.get("role").asString().equals("crossbeam")
                  ? "western-cedars"
                  : "southern-pine");
    }
    JsonNode pine = json(with(all, "propose", LANE, "--list", "buying"));
    JsonNode mixed = json(with(cedar, "propose", LANE, "--list", "buying"));
    assertThat(text(with(cedar, "propose", LANE, "--list", "buying")))
        .contains("2x6 western cedars");
    // 1.5 in x 5.5 in of cedar at 26.6 lb/cu ft in place of pine at 38.8, both weighed fresh from
    // the plant: of the weight at 0.3 of moisture, (1 + 0.75)/(1 + 0.3) = 1.346 of it
    double boughtIn = 0;
    for (JsonNode plan : mixed.get("sawing")) {
      if (plan.get("species").asString().equals("western-cedars")) {
        assertThat(plan.get("size").asString()).isEqualTo("2x6");
        boughtIn += plan.get("boughtIn").asDouble();
        for (JsonNode spare : plan.get("spare")) {
          boughtIn += spare.get("count").asDouble() * spare.get("lengthIn").asDouble();
        }
      }
    }
    assertThat(boughtIn).isPositive();
    double lessLb =
        pine.get("totals").get("weightLb").asDouble()
            - mixed.get("totals").get("weightLb").asDouble();
    assertThat(lessLb)
        .isCloseTo(boughtIn * 1.5 * 5.5 * (38.8 - 26.6) * 1.75 / 1.3 / 1728, within(0.5));
  }

  @Test
  void a_design_file_carries_the_timber_of_every_role_back(@TempDir Path folder)
      throws IOException {
    String design =
        text("propose", LANE, "--set", "materials.posts.grade=No.1", "--format", "yaml");
    assertThat(design).contains("materials:").contains("  posts:\n    grade: No.1");
    Path file = folder.resolve("design.yaml");
    Files.writeString(file, design);
    JsonNode same =
        json("check", LANE, "--design", file.toString(), "--set", "materials.posts.grade=No.1");
    JsonNode proposed = json("propose", LANE, "--set", "materials.posts.grade=No.1");
    assertThat(check(same, "post.combined").get("ratio"))
        .isEqualTo(check(proposed, "post.combined").get("ratio"));
    assertThat(
            oneLine(
                text(
                    "check",
                    LANE,
                    "--design",
                    file.toString(),
                    "--set",
                    "materials.posts.grade=No.2")))
        .contains("Grade of the posts: here No.1. The site file asks for No.2 here.");
  }

  @Test
  void a_role_that_no_structure_has_is_refused_with_those_that_it_has() {
    assertThat(
            oneLine(
                Run.of("propose", LANE, "--set", "materials.post.grade=No.1")
                    .endedWith(ExitStatus.WRONG_INPUT)
                    .err()))
        .contains("posts, headers, crossbeams, rails or braces. Maybe posts?");
  }

  private static JsonNode member(JsonNode proposal, String role) {
    return StreamSupport.stream(proposal.get("members").spliterator(), false)
        .filter(each -> each.get("role").asString().equals(role))
        .findFirst()
        .orElseThrow();
  }

  private static String timber(JsonNode proposal, String role) {
    JsonNode member = member(proposal, role);
    return member.get("species").asString() + " " + member.get("grade").asString();
  }

  private static JsonNode check(JsonNode proposal, String id) {
    return StreamSupport.stream(proposal.get("checks").spliterator(), false)
        .filter(each -> each.get("id").asString().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String[] with(String[] more, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  private static JsonNode json(String... words) {
    return new JsonMapper().readTree(text(with(new String[] {"--format", "json"}, words)));
  }

  private static String text(String... words) {
    return oneLineBreaks(Run.of(words).endedWith(ExitStatus.ANSWERED).out());
  }

  private static String oneLineBreaks(String out) {
    return out.startsWith("{") || out.startsWith("title:") ? out : oneLine(out);
  }

  private static String oneLine(String out) {
    return out.replaceAll("\\s+", " ");
  }
}
