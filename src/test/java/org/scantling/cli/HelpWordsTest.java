package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.scantling.sayings.WordFile;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

class HelpWordsTest {
  private final CommandLine commands = commands();

  @Test
  void nothing_is_read_before_help_is_asked_for() {
    assertThat(commands.getResourceBundle()).isNull();

    String help = commands.getUsageMessage();

    assertThat(help).startsWith("Scales a proven garden walk");
    assertThat(commands.getResourceBundle()).isInstanceOf(HelpWords.class);
  }

  @Test
  void every_command_every_option_and_every_parameter_is_told() {
    HelpWords.told(commands);
    List<String> untold = new ArrayList<>();
    all()
        .forEach(
            command -> {
              if (command.usageMessage().description().length == 0) {
                untold.add(command.qualifiedName());
              }
              command.args().stream()
                  .filter(arg -> arg.description().length == 0)
                  .forEach(arg -> untold.add(command.qualifiedName() + " " + arg.paramLabel()));
            });

    assertThat(untold).isEmpty();
  }

  @Test
  void no_row_is_there_for_nothing() {
    Set<String> known = new TreeSet<>();
    all()
        .forEach(
            command -> {
              Stream.of("header", "description", "footer")
                  .forEach(part -> known.add(command.qualifiedName(".") + ".usage." + part));
              command.args().stream()
                  .map(HelpWordsTest::key)
                  .forEach(
                      key -> known.addAll(Set.of(key, command.qualifiedName(".") + "." + key)));
            });

    assertThat(known)
        .containsAll(WordFile.read("words/help.csv").stream().map(row -> row.cell("key")).toList());
  }

  @Test
  void a_further_row_of_a_key_is_a_further_paragraph() {
    HelpWords.told(commands);
    CommandSpec check = commands.getSubcommands().get("check").getCommandSpec();

    assertThat(check.usageMessage().description()).hasSize(2);
    assertThat(check.usageMessage().description()[1]).startsWith("The design file is what");
  }

  @Test
  void what_a_span_table_goes_by_of_itself_is_told_as_it_is() {
    HelpWords.told(commands);
    Map<String, OptionSpec> spans =
        commands.getSubcommands().get("spans").getCommandSpec().optionsMap();

    assertThat(spans.get("--spacing").description()[0]).contains(SpanShapeOptions.SPACINGS);
    assertThat(spans.get("--tributary").description()[0])
        .contains(SpanShapeOptions.WIDTHS, SpanShapeOptions.AREAS);
  }

  private Stream<CommandSpec> all() {
    return Stream.concat(Stream.of(commands), commands.getSubcommands().values().stream())
        .map(CommandLine::getCommandSpec);
  }

  private static String key(ArgSpec arg) {
    return arg instanceof OptionSpec option
        ? option.longestName().replaceFirst("^-+", "")
        : arg.descriptionKey();
  }

  private static CommandLine commands() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return Main.commandLine(nowhere, nowhere);
  }
}
