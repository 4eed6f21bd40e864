package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.intake.DesignReader;
import org.scantling.intake.SiteReader;
import org.scantling.intake.SourceText;
import org.scantling.intake.Vocabulary;
import org.scantling.tables.Tables;

/** The whole files that the help and the README show are read as they stand. */
class ShownFilesTest {
  private static final Vocabulary VOCABULARY = Vocabulary.of(Tables.load());
  private static final Path SCENARIOS = Path.of("scenarios");
  private static final Pattern BLOCK = Pattern.compile("```yaml\n(title:.*?)```", Pattern.DOTALL);

  @Test
  void help_shows_a_whole_site_file_and_a_whole_base_file() {
    assertThat(site(shown("propose"))).isEqualTo(site(readme().get(0)));
    assertThat(base(shown("check"))).isEqualTo(base(readme().get(1)));
  }

  @Test
  void the_base_file_that_is_shown_is_the_rose_gate() {
    BaseDesign gate =
        new DesignReader(VOCABULARY).read(SCENARIOS.resolve("base/rose-gate.yaml")).design();

    assertThat(base(readme().get(1))).isEqualTo(gate);
  }

  @Test
  void every_command_shows_an_example() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    HelpWords.told(Main.commandLine(nowhere, nowhere))
        .getSubcommands()
        .forEach(
            (name, command) ->
                assertThat(String.join("\n", command.getCommandSpec().usageMessage().footer()))
                    .as(name)
                    .contains("xample", "scantling " + name));
  }

  /** Indented by two, as it stands in the help. */
  private static String shown(String command) {
    return Run.of(command, "--help")
        .endedWith(0)
        .out()
        .lines()
        .dropWhile(line -> !line.startsWith("  title:"))
        .takeWhile(line -> line.startsWith("  "))
        .map(line -> line.substring(2))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static List<String> readme() {
    try {
      Matcher blocks = BLOCK.matcher(Files.readString(Path.of("README.md")));
      return blocks.results().map(each -> each.group(1)).toList();
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static Site site(String text) {
    return new SiteReader(VOCABULARY).read(source(text), List.of()).site();
  }

  private static BaseDesign base(String text) {
    return new DesignReader(VOCABULARY).read(source(text)).design();
  }

  private static SourceText source(String text) {
    return new SourceText("shown.yaml", 1, text, SCENARIOS);
  }
}
