package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code man scantling} shows. */
class ManPagesTest {
  private static final Map<String, String> PAGES = ManPages.pages();

  @Test
  void the_program_and_every_command_has_a_page() {
    Set<String> wanted = new TreeSet<>(Set.of("scantling.1"));
    Commands.names().forEach(each -> wanted.add("scantling-" + each + ".1"));

    assertThat(PAGES.keySet()).containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(PAGES.get("scantling.1"))
        .contains(".SH COMMANDS", "\\fBpropose\\fR", "scantling\\-why(1)".replace("\\", ""));
  }

  @Test
  void a_page_names_its_command_in_a_line_shows_an_example_and_what_it_ends_with() {
    PAGES.forEach(
        (name, page) -> {
          String command = name.replace(".1", "");
          List<String> lines = page.lines().toList();
          String told = lines.get(lines.indexOf(".SH NAME") + 2);

          assertThat(told).startsWith(command + " - ").endsWith(".").doesNotContain(". ");
          assertThat(page).contains(".SH OPTIONS", ".SH EXIT STATUS\n.PP\n0 an answer");
          if (!command.equals("scantling")) {
            assertThat(page).as(name).contains(".SH EXAMPLES", "\n  " + command.replace("-", " "));
          }
        });
  }

  @Test
  void every_option_stands_there_with_what_it_takes() {
    assertThat(PAGES.get("scantling-propose.1"))
        .contains("\\fB\\-\\-set=PATH=VALUE\\fR", "\\fB\\-v, \\-\\-verbose\\fR")
        .contains("\\fBSITE\\fR\nThe site file, YAML or JSON; - for standard input.");
  }

  @Test
  void a_whole_file_stands_there_as_it_is_typed() {
    assertThat(PAGES.get("scantling-propose.1"))
        .contains(
            ".nf\n  title: Walk to the lower orchard\n",
            "\n    climate:\n      frost\\-depth: 42 in\n");
  }

  @Test
  void nothing_is_left_of_how_the_help_is_formatted_and_no_line_is_a_request_by_accident() {
    PAGES.forEach(
        (name, page) ->
            assertThat(page.lines())
                .as(name)
                .noneMatch(line -> line.contains("%n") || line.contains("DEFAULT-VALUE"))
                .filteredOn(line -> line.startsWith(".") || line.startsWith("'"))
                .allMatch(line -> line.matches("[.](TH|SH|PP|TP|HP|RS|RE|br|nf|fi|nh|ad)( .*)?")));
  }

  @Test
  void a_reader_of_manuals_takes_them(@TempDir Path folder) throws Exception {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")));
    ManPages.main(new String[] {folder.toString()});
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Process reader =
            new ProcessBuilder("groff", "-man", "-ww", "-Tascii", "-z", file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).as("%s", file).isEmpty();
        assertThat(reader.waitFor()).isZero();
      }
    }
  }
}
