package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CommandsTest {
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
