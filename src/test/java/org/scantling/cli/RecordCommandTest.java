package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordCommandTest {
  @TempDir private Path folder;
  private Path file;
  private String before;

  @BeforeEach
  void copy() throws IOException {
    file = folder.resolve("rose-gate.yaml");
    before = Files.readString(Path.of("scenarios/base/rose-gate.yaml"));
    Files.writeString(file, before);
  }

  @Test
  void a_storm_is_added_and_every_other_line_stays() throws IOException {
    Run run =
        Run.of(
                "record",
                file.toString(),
                "--kind",
                "storm",
                "--date",
                "2012-10-29",
                "--note",
                "gusts of 85 mph, \"all\" of them: nothing moved",
                "--photo",
                "gate 2.jpg")
            .endedWith(ExitStatus.ANSWERED);

    assertThat(run.out()).contains("1 entry");
    assertThat(Files.readString(file))
        .isEqualTo(
            before.replace(
                "  vine: climbing-rose\n",
                "  vine: climbing-rose\n  record:\n    - { date: 2012-10-29, kind: storm, what:"
                    + " \"gusts of 85 mph, \\\"all\\\" of them: nothing moved\", photo:"
                    + " \"gate 2.jpg\" }\n"));
  }

  @Test
  void the_record_is_told_where_the_base_is_spoken_of() {
    Run.of("record", file.toString(), "--kind=storm", "--date=2012-10", "--note=gusts of 85 mph.");
    Run.of("record", file.toString(), "--kind=repair", "--date=2016", "--note=new rail");
    Run.of("record", file.toString(), "--kind=inspection", "--date=2020", "--note=all sound");
    Run.of("record", file.toString(), "--kind=inspection", "--date=2026-05-03", "--note=one split");
    String site = "scenarios/mower-lane.yaml";
    String base = "base=" + file.toAbsolutePath();
    String told =
        "It came through the storm of October 2012 (gusts of 85 mph). Mended, 2016: new rail."
            + " Last looked over, May 3, 2026: one split.";

    String proposed = Run.of("propose", site, "--set", base).endedWith(0).out();
    String checked =
        Run.of("check", site, "--set", base, "--design", file.toString()).endedWith(0).out();
    String json = Run.of("propose", site, "--set", base, "--format=json").endedWith(0).out();

    assertThat(proposed.replaceAll("\\s+", " ")).contains(told);
    assertThat(checked.replaceAll("\\s+", " ")).contains(told);
    assertThat(json).contains("\"kind\" : \"repair\"", "\"what\" : \"new rail\"");
  }

  @Test
  void without_options_it_is_asked_for() throws IOException {
    Run.answering("2\n2014-02\ntwo feet, wet\n\n", "record", file.toString())
        .endedWith(ExitStatus.ANSWERED);

    assertThat(Files.readString(file))
        .contains("- { date: 2014-02, kind: snow, what: \"two feet, wet\" }");
    assertThat(folder.resolve("rose-gate.yaml.visit")).doesNotExist();
  }

  @Test
  void an_empty_line_for_the_date_is_today() throws IOException {
    Run.answering("inspection\n\nnothing has moved\n\n", "record", file.toString())
        .endedWith(ExitStatus.ANSWERED);

    assertThat(Files.readString(file)).contains("{ date: 2026-05-03, kind: inspection");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--kind=hail --note=x              | hail must be one of storm, snow, inspection or repair",
        "--kind=storm --note=x --date=2012-13 | 2012-13 must be a year, a month or a day",
        "--kind=storm --note=x --date=soon | soon must be a year, a month or a day",
        "--kind=storm                      | --note is missing",
        "--note=x                          | --kind is missing",
      })
  void what_is_no_entry_is_refused_and_the_file_left_alone(String options, String why)
      throws IOException {
    String[] all = ("record " + file + " " + options.strip()).split(" ");
    Run run = Run.of(all).endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " ")).contains(why);
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void a_drawing_has_no_record() {
    Run run =
        Run.of("record", "scenarios/base/vineyard-porch.yaml", "--kind=storm", "--note=x")
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " ")).contains("has no 'proven:' part");
  }

  @Test
  void a_layout_that_is_not_known_is_left_alone_and_the_line_told() throws IOException {
    String json = before.replaceAll("(?m)^#.*\\n", "").replace("proven:\n", "\"proven\":\n");
    Files.writeString(file, json);
    Run run =
        Run.of("record", file.toString(), "--kind=storm", "--date=2012", "--note=it blew")
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("by hand: - { date: 2012, kind: storm, what: \"it blew\" }");
    assertThat(Files.readString(file)).isEqualTo(json);
  }
}
