package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What a shell completes. */
class CompletionScriptTest {
  @Test
  void every_command_and_every_option_of_it_is_known() {
    String script = CompletionScript.text();
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    CommandLine root = Main.commandLine(nowhere, nowhere);

    assertThat(root.getSubcommands().keySet()).containsExactlyElementsOf(Commands.names());
    root.getSubcommands()
        .forEach(
            (name, command) -> {
              assertThat(script).contains("_picocli_scantling_" + name.replace("-", ""));
              command
                  .getCommandSpec()
                  .options()
                  .forEach(option -> assertThat(script).contains(option.longestName()));
            });
    assertThat(script).contains("complete -F _complete_scantling");
  }

  @Test
  void a_shell_can_read_it(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("scantling");
    CompletionScript.main(new String[] {file.toString()});

    assertThat(Files.readString(file)).isEqualTo(CompletionScript.text());
    Process shell =
        new ProcessBuilder("bash", "-n", file.toString()).redirectErrorStream(true).start();
    assertThat(new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8)).isEmpty();
    assertThat(shell.waitFor()).isZero();
  }
}
