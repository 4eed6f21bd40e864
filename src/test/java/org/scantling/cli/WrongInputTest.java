package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong is said in one place, with status 2, and nothing is answered or written. */
class WrongInputTest {
  private static final Path MALFORMED = Path.of("src/test/resources/intake/malformed");
  private static final String SITE = "scenarios/long-walk.yaml";

  static List<Path> malformed() throws IOException {
    try (Stream<Path> files = Files.list(MALFORMED)) {
      return files
          .filter(file -> !file.toString().endsWith(".expected"))
          .filter(Files::isRegularFile)
          .filter(file -> !file.getFileName().toString().startsWith("design-"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("malformed")
  void a_malformed_file_is_told_and_not_answered(Path file) {
    Run run = Run.of("propose", file.toString()).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(":").doesNotContain("Exception", "\tat ");
    assertThat(run.err().lines())
        .filteredOn(line -> !line.startsWith(file.toString()))
        .allMatch(line -> line.length() <= 80 || !line.strip().contains(" "));
  }

  @Test
  void thirty_malformed_files_at_least() throws IOException {
    assertThat(malformed()).hasSizeGreaterThanOrEqualTo(30);
  }

  @Test
  void a_file_that_is_not_there_is_named() {
    assertThat(Run.of("propose", "nowhere.yaml").endedWith(ExitStatus.WRONG_INPUT).err())
        .startsWith("nowhere.yaml:");
  }

  @Test
  void an_unknown_option_suggests_the_near_one() {
    assertThat(Run.of("propose", SITE, "--formt", "json").endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("--formt");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "propose | --format | poem | text, json, markdown, yaml or csv",
        "propose | --units | metrik | imperial or metric. Maybe metric?",
        "propose | --color | red | auto, always or never",
        "propose | --list | cuts | cut-list, buying, set-out, order, climbers or upkeep",
        "why | --for | wrongword | client, builder or engineer",
        "why | --for | '' | client, builder or engineer",
        "limits | --format | poem | text, json or markdown"
      })
  void an_option_of_a_few_words_is_told_in_the_words_that_are_typed(
      String command, String option, String typed, String accepted) {
    String found = typed.isEmpty() ? "nothing" : "'" + typed + "'";
    Run run = Run.of(command, SITE, option + "=" + typed).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.err().replaceAll("\\s+", " "))
        .contains(option + "'", "found " + found + ", accepted is " + accepted)
        .doesNotContain("[", "CLIENT", "TEXT", "case-");
  }

  @Test
  void such_words_are_read_in_any_case() {
    Run.of("rules", "--format", "TEXT", "climate.frost.zone").endedWith(ExitStatus.ANSWERED);
  }

  @Test
  void a_setting_that_no_site_file_has_is_told_with_the_near_one() {
    assertThat(
            Run.of("propose", SITE, "--set", "walkway.lenght=20ft")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("walkway.lenght", "Maybe length?");
  }

  @Test
  void a_setting_of_the_wrong_kind_is_told() {
    assertThat(
            Run.of("propose", SITE, "--set", "walkway.length=20 psf")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("walkway.length", "20 psf");
  }

  @Test
  void a_check_without_a_design_is_told_which_option_is_missing() {
    assertThat(Run.of("check", SITE).endedWith(ExitStatus.WRONG_INPUT).err()).contains("--design");
  }

  @Test
  void a_design_that_is_not_there_is_named() {
    Run run = Run.of("check", SITE, "--design", "nowhere.yaml").endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.err()).startsWith("nowhere.yaml:");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void a_site_file_is_no_design() {
    assertThat(Run.of("check", SITE, "--design", SITE).endedWith(ExitStatus.WRONG_INPUT).err())
        .contains(SITE + ":4: site: key site (unknown) must be");
  }

  @Test
  void house_rules_that_cannot_be_read_are_named(@TempDir Path folder) throws IOException {
    Path loop = folder.resolve("ours");
    Files.createSymbolicLink(loop, loop);
    assertThat(
            Run.of("propose", SITE, "--house-rules", loop.toString())
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains(loop.toString(), "found 'unreadable (")
        .doesNotContain("fault of the program", "Exception");
  }

  @Test
  void a_house_rule_that_is_no_text_is_named(@TempDir Path folder) throws IOException {
    Files.write(folder.resolve("thumb.csv"), new byte[] {'i', 'd', ',', (byte) 0xC3, '(', '\n'});
    assertThat(
            Run.of("propose", SITE, "--house-rules", folder.toString())
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("thumb.csv");
  }

  @Test
  void house_rules_that_are_no_tables_are_refused(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "ask Wilma");
    assertThat(
            Run.of("propose", SITE, "--house-rules", folder.toString())
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("notes.txt");
  }
}
