package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Grades that are not North American are refused with the reason and what to do instead. */
class OtherGradesTest {
  private static final String SITE = "scenarios/metric-country.yaml";

  @TempDir private Path folder;

  @Test
  void a_site_file_that_names_one_is_refused() {
    refused(
        Run.of("propose", SITE, "--set", "materials.grade=C24"), "C24, a strength class of EN 338");
    refused(
        Run.of("propose", SITE, "--set", "materials.posts={grade: C16}"), "C16, a strength class");
  }

  @Test
  void a_span_table_of_one_is_refused() {
    refused(Run.of("spans", "crossbeams", "--grade", "GL24h"), "GL24h, a class of glued laminated");
  }

  @Test
  void a_yard_that_lists_one_is_refused() throws IOException {
    Path yard = Files.writeString(folder.resolve("yard.csv"), "size,length,grade\n45x95,3 m,C16\n");
    refused(
        Run.of("propose", SITE, "--list", "buying", "--yard", yard.toString()),
        "grade: found 'C16'");
  }

  @Test
  void a_yard_with_a_metric_size_of_its_own_is_told_the_line_that_adds_it_and_that_line_does()
      throws IOException {
    Path yard = Files.writeString(folder.resolve("yard.csv"), "size,length\n45x120,3000 mm\n");
    Run run =
        Run.of("propose", SITE, "--list", "buying", "--yard", yard.toString())
            .endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("by a line '45x120,metric' under 'id,market'");

    Path house = Files.createDirectory(folder.resolve("house"));
    Files.writeString(house.resolve("sizes.csv"), "id,market\n45x120,metric\n");
    Run.of(
            "propose",
            SITE,
            "--list",
            "buying",
            "--yard",
            yard.toString(),
            "--house-rules",
            house.toString())
        .endedWith(ExitStatus.ANSWERED);
  }

  private static void refused(Run run, String told) {
    assertThat(run.endedWith(ExitStatus.WRONG_INPUT).err().replaceAll("\\s+", " "))
        .contains(told, "Ask the yard for timber with a North American stamp")
        .contains("an engineer who works by that code");
    assertThat(run.out()).isEmpty();
  }
}
