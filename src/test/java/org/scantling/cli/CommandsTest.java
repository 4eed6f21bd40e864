package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CommandsTest {
  @ParameterizedTest
  @ValueSource(strings = {"51 1/4 in", "51 1/2 in"})
  void a_change_that_the_client_could_not_see_is_not_told_as_one_number_and_the_same(String width) {
    String said =
        Run.of(
                "why",
                "scenarios/same-place.yaml",
                "crossbeams",
                "--for",
                "client",
                "--set",
                "walkway.clear-width=" + width)
            .endedWith(ExitStatus.ANSWERED)
            .out()
            .replaceAll("\\s+", " ");

    // Tails of 13 in over rows 54 in apart: over 54 3/4 and 55 in they are 13 3/16 and 13 1/4 in.
    assertThat(said).contains("about 1 ft 1 in, a little more than before.");
  }

  @Test
  void proposals_that_differ_in_lengths_alone_are_not_told_to_have_the_same_timbers() {
    String said =
        Run.of("compare", "scenarios/mower-lane.yaml", "--set", "walkway.clear-width=83in")
            .endedWith(ExitStatus.ANSWERED)
            .out();

    assertThat(said)
        .contains("The timber sizes and the holes are the same; what else differs is below.")
        .contains("Crossbeam tails");
  }

  @Test
  void each_command_is_called_by_its_own_name() {
    Map<String, CommandLine> all = line().getSubcommands();

    assertThat(all.keySet()).containsExactlyElementsOf(Commands.names());
    all.forEach((name, command) -> assertThat(command.getCommandName()).isEqualTo(name));
  }

  @Test
  void where_one_is_named_the_others_are_not_built() {
    assertThat(line("why", "site.yaml", "posts").getSubcommands()).containsOnlyKeys("why");
    assertThat(line("--help").getSubcommands()).hasSizeGreaterThan(1);
    assertThat(line("prpose").getSubcommands()).hasSizeGreaterThan(1);
  }

  private static CommandLine line(String... args) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return Main.commandLine(nowhere, nowhere, args);
  }
}
