package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands between a builder and the first answer: the bare command, standard input, habits. */
class FirstTryTest {
  private static final String SITE = "scenarios/mower-lane.yaml";

  @TempDir private Path home;

  @Test
  void the_bare_command_shows_three_commands_and_nothing_else() {
    Run run = Run.of().endedWith(ExitStatus.ANSWERED);

    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines())
        .hasSize(3)
        .allMatch(line -> line.startsWith("scantling ") && line.length() <= 80)
        .anyMatch(line -> line.startsWith("scantling propose SITE "));
  }

  @Test
  void a_hyphen_reads_the_site_from_standard_input_and_its_base_from_the_working_folder()
      throws IOException {
    String text = Files.readString(Path.of(SITE)).replace("base/", "scenarios/base/");

    assertThat(typed(text, "propose", "-").endedWith(ExitStatus.ANSWERED).out())
        .isEqualTo(Run.of("propose", SITE).endedWith(ExitStatus.ANSWERED).out());
  }

  @Test
  void it_is_read_once_where_it_is_compared_with_itself() throws IOException {
    String text = Files.readString(Path.of(SITE)).replace("base/", "scenarios/base/");

    assertThat(
            typed(text, "compare", "-", "--set", "walkway.length=44ft")
                .endedWith(ExitStatus.ANSWERED)
                .out())
        .contains("with walkway.length=44ft", "12 of 3'-8\"");
  }

  @Test
  void what_is_wrong_on_standard_input_is_named_by_its_line() {
    assertThat(typed("title: A\nbase: x\n", "propose", "-").endedWith(2).err())
        .contains("standard input:2: base: x (no such file)");
  }

  private static Run typed(String text, String... args) {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
      return Run.of(args);
    } finally {
      System.setIn(before);
    }
  }

  private Run with(String defaults, String... args) throws IOException {
    Path file = home.resolve("defaults.yaml");
    Files.writeString(file, defaults);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.execute(
            Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), args),
            file,
            home,
            args);
    return new Run(status, out.toString(), err.toString());
  }

  @Test
  void what_is_always_wanted_is_kept_in_a_file_and_any_option_wins_over_it() throws IOException {
    String metric = Run.of("propose", SITE, "--units", "metric").out();

    assertThat(with("units: metric\n", "propose", SITE).endedWith(0).out()).isEqualTo(metric);
    assertThat(with("units: metric\n", "propose", SITE, "--units", "imperial").endedWith(0).out())
        .isEqualTo(Run.of("propose", SITE).out());
  }

  @Test
  void a_key_for_which_no_command_has_an_option_is_refused() throws IOException {
    Run run = with("estimate: client\n", "propose", SITE).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err()).contains("estimate", "units, yard, prices or house-rules");
  }

  @Test
  void a_folder_of_house_rules_is_found_from_the_file_on() throws IOException {
    Files.createDirectories(home.resolve("house"));
    Files.writeString(home.resolve("house/soils.csv"), "id,words\nclay,our yellow clay\n");

    assertThat(with("house-rules: house\n", "choices", "soil").endedWith(0).out())
        .contains("our yellow clay");
    assertThat(with("house-rules: ~/house\n", "choices", "soil").endedWith(0).out())
        .contains("our yellow clay");
  }

  @Test
  void a_yard_that_is_always_bought_from_counts_where_something_is_bought() throws IOException {
    Files.writeString(
        home.resolve("yard.csv"),
        "size,length,price\n4 x 4,12 ft,\"$1,014.50\"\n2x6,12 ft,$9\n2x4,12 ft,5\n4x6,16 ft,30\n");

    assertThat(with("yard: yard.csv\n", "propose", SITE).endedWith(0).out())
        .isEqualTo(Run.of("propose", SITE).out());
    assertThat(with("yard: yard.csv\n", "propose", SITE, "--list", "buying").endedWith(0).out())
        .isNotEqualTo(Run.of("propose", SITE, "--list", "buying").out());
  }

  @Test
  void what_things_cost_may_be_kept_there_too() throws IOException {
    Files.writeString(
        home.resolve("prices.csv"), "item,unit,price,currency,note\nlabor-hour,hour,40,USD,\n");

    assertThat(with("prices: prices.csv\n", "propose", SITE).endedWith(0).out())
        .isEqualTo(Run.of("propose", SITE, "--prices", home.resolve("prices.csv").toString()).out())
        .isNotEqualTo(Run.of("propose", SITE).out());
  }

  @Test
  void with_v_it_is_said_that_the_file_was_read() throws IOException {
    assertThat(with("units: metric\n", "propose", SITE, "-v").endedWith(0).err())
        .contains("Defaults read from " + home.resolve("defaults.yaml"));
    assertThat(with("units: metric\n", "propose", SITE).endedWith(0).err()).isEmpty();
  }

  @Test
  void a_slip_in_it_is_told_like_any_other_and_nothing_is_answered() throws IOException {
    Run run = with("unit: metrc\nyard: 7\n", "propose", SITE).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.out()).isEmpty();
    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("defaults.yaml:1: unit: key unit (unknown)", "Maybe units?", "Maybe metric?")
        .contains("defaults.yaml:2: yard: 7 (a bare number) must be text");
  }

  @Test
  void it_stands_at_the_usual_place_of_the_system() throws IOException {
    Path usual =
        Files.createDirectories(home.resolve(".config/scantling")).resolve("defaults.yaml");
    Path named = Files.createDirectories(home.resolve("cfg/scantling")).resolve("defaults.yaml");
    Path roaming = Files.createDirectories(home.resolve("roam/scantling")).resolve("defaults.yaml");
    assertThat(UserDefaults.place(Map.of(), "Linux", home)).isEmpty();
    for (Path file : new Path[] {usual, named, roaming}) {
      Files.writeString(file, "units: metric\n");
    }

    assertThat(UserDefaults.place(Map.of(), "Linux", home)).hasValue(usual);
    assertThat(
            UserDefaults.place(
                Map.of("XDG_CONFIG_HOME", home.resolve("cfg").toString()), "Mac OS X", home))
        .hasValue(named);
    assertThat(
            UserDefaults.place(
                Map.of("APPDATA", home.resolve("roam").toString()), "Windows 11", home))
        .hasValue(roaming);
  }
}
