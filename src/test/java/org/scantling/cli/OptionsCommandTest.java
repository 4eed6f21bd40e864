package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.words.Jargon;
import org.scantling.words.ReadingEase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Ways to build a site, from command to answer. */
class OptionsCommandTest {
  private static final String SITE = "scenarios/bean-row.yaml";
  private static final double PLAIN_ENGLISH = 60;

  @TempDir private Path folder;

  private static String out(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void the_ways_are_told_as_a_person_has_read_them() {
    Golden.compare("options-bean-row.txt", out("options", SITE));
    Golden.compare("options-bean-row-client.txt", out("options", SITE, "--for", "client"));
  }

  @Test
  void each_way_in_json_can_be_set_and_is_proposed_so() {
    JsonNode found = new JsonMapper().readTree(out("options", SITE, "--format", "json"));

    assertThat(found.get("schema").asString()).isEqualTo("scantling/options/1");
    assertThat(found.get("options").get(0).get("proposed").asBoolean()).isTrue();
    for (JsonNode option : found.get("options")) {
      List<String> args = new ArrayList<>(List.of("propose", SITE, "--format", "json"));
      option.get("set").forEach(each -> args.addAll(List.of("--set", each.asString())));
      JsonNode proposal = new JsonMapper().readTree(out(args.toArray(String[]::new)));
      assertThat(proposal.get("status").asString()).isEqualTo("proposed");
      assertThat(proposal.get("layout").get("postCount")).isEqualTo(option.get("postCount"));
      assertThat(proposal.get("workHours")).isEqualTo(option.get("workHours"));
    }
  }

  @Test
  void the_lines_to_copy_are_options_of_the_command() {
    String text = out("options", "scenarios/mower-lane.yaml");

    assertThat(text).contains("--set walkway.bays=2 \\\n   --set preferences.header=on-top");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void what_the_file_asks_for_outright_is_not_put_otherwise() {
    String text = out("options", SITE, "--set", "preferences.header=on-top");

    assertThat(text).doesNotContain("preferences.header=paired");
  }

  @Test
  void a_client_reads_it_easily() {
    String text =
        out("options", "scenarios/mower-lane.yaml", "--for", "client")
            .replaceAll("(?m)^[-=]+$", "");

    assertThat(text).doesNotContainPattern(Jargon.PATTERN);
    String prose = text.replaceAll("(?m)^[A-F]\\. .*$", "");
    assertThat(ReadingEase.of(prose).score()).isGreaterThan(PLAIN_ENGLISH);
  }

  @Test
  void where_nothing_can_be_built_it_says_so_and_why() {
    Run run = Run.of("options", "scenarios/too-much-snow.yaml");

    run.endedWith(ExitStatus.NEEDS_ENGINEER);
    assertThat(flat(run.out())).contains("Nothing can be built here inside these rules");
  }

  @Test
  void a_way_for_which_the_list_has_no_price_is_never_the_cheapest() throws IOException {
    String sheet = out("prices", SITE).replace(",,,", ",9,USD,");
    Path prices = Files.writeString(folder.resolve("prices.csv"), sheet);

    String text = out("options", SITE, "--prices", prices.toString());

    assertThat(flat(text))
        .contains("A: As proposed, lowest cost")
        .contains("a cost that is not known", "A cost with a + is not all of it");
    assertThat(out("options", SITE, "--prices", prices.toString(), "--format", "json"))
        .contains("\"cost\"", "\"currency\" : \"USD\"", "\"without\"");
    assertThat(flat(out("options", SITE, "--prices", prices.toString(), "--for", "client")))
        .contains("It costs about", "We do not know its price yet.");
  }

  @Test
  void where_nothing_has_a_price_a_client_is_told_none() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.csv"), out("prices", SITE));

    assertThat(flat(out("options", SITE, "--prices", empty.toString(), "--for", "client")))
        .contains("We do not know its price yet.")
        .doesNotContain("It costs");
  }

  @Test
  void what_is_no_worse_than_the_proposed_one_at_anything_is_shown_and_named_by_its_letter() {
    String text = flat(out("options", "scenarios/mower-lane.yaml", "--set", "walkway.bays=5"));

    assertThat(text)
        .contains("B is no worse than A at anything that is counted here")
        .contains("B --set walkway.bays=4")
        .contains("cautions and assumptions of each come with propose");
  }

  @Test
  void of_several_bases_the_ways_keep_to_the_one_that_is_taken_and_one_is_another() {
    JsonNode found =
        new JsonMapper().readTree(out("options", "scenarios/orchard-gap.yaml", "--format", "json"));

    for (JsonNode option : found.get("options")) {
      if (!option.get("proposed").asBoolean()) {
        assertThat(option.get("set").toString()).contains("base=base/");
      }
    }
  }
}
