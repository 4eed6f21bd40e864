package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario from file to printed answer, against an answer that a person has read. */
class ScenarioTest {
  private static final Path FOLDER = Path.of("scenarios");
  static final Set<String> REFUSED = Set.of("too-much-snow");

  /** One that stands in the ground and one on brackets. */
  private static final Set<String> WITH_WORKINGS = Set.of("windy-hill", "stone-terrace");

  private static final Pattern WORKINGS =
      Pattern.compile("(?ms)^  \"(workings|symbols)\" : \\[ \\{.*?^  \\} \\]");

  static List<String> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml"))
          .map(name -> name.substring(0, name.length() - ".yaml".length()))
          .sorted()
          .toList();
    }
  }

  @Test
  void there_are_scenarios_and_each_says_what_it_shows() throws IOException {
    assertThat(scenarios()).hasSizeGreaterThanOrEqualTo(10).containsAll(REFUSED);
    for (String name : scenarios()) {
      assertThat(Files.readString(file(name))).as(name).startsWith("# Shows: ");
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void the_proposal_reads_as_expected(String name) throws IOException {
    Golden.compare(name + ".txt", propose(name, "text"));
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void the_proposal_for_programs_is_as_expected(String name) throws IOException {
    String json = propose(name, "json");
    Golden.compare(name + ".json", WITH_WORKINGS.contains(name) ? json : withoutWorkings(json));
  }

  /**
   * Hundreds of steps a site, of which each is worked again in CalculationTraceTest, and their
   * symbols, each of which SymbolListTest finds defined.
   */
  private static String withoutWorkings(String json) {
    return WORKINGS.matcher(json).replaceAll("  \"$1\" : [ ]");
  }

  @Test
  void a_base_that_has_stood_past_a_published_limit_may_be_matched_where_that_is_asked_for() {
    String byRecord =
        Run.of("propose", file("proven-ground").toString(), "--set", "preferences.basis=proven")
            .endedWith(ExitStatus.ANSWERED)
            .out();
    Golden.compare("proven-ground-by-record.txt", byRecord);
    assertThat(byRecord).contains("only by the record of the");
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void nothing_is_wider_than_a_terminal(String name) throws IOException {
    assertThat(propose(name, "text").lines()).allMatch(line -> line.length() <= 80);
  }

  private static String propose(String name, String format) {
    int expected = REFUSED.contains(name) ? ExitStatus.NEEDS_ENGINEER : ExitStatus.ANSWERED;
    return Run.of("propose", file(name).toString(), "--format", format).endedWith(expected).out();
  }

  private static Path file(String name) {
    return FOLDER.resolve(name + ".yaml");
  }
}
