package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.shop.ListKind;

/** Every list of every scenario, against lists that a person has read with saw and tape in mind. */
class ListScenarioTest {
  /** A long walk with pieced pairs of boards on feet and inches, and a metric one. */
  private static final List<String> IN_EVERY_FORMAT =
      List.of("everything-at-once", "metric-country");

  /** What no scenario of the demo shows: concrete, level steps, metric brackets, wide and tall. */
  private static final List<String> RARER =
      List.of(
          "concrete-asked", "steep-ramp", "metric-brackets", "tall-and-wide", "roses-on-paving");

  static Stream<Arguments> texts() throws IOException {
    List<String> scenarios = new ArrayList<>(ContractTest.proposed());
    scenarios.addAll(RARER);
    return every(scenarios, List.of("text"));
  }

  static Stream<Arguments> others() {
    return every(IN_EVERY_FORMAT, List.of("csv", "json"));
  }

  private static Stream<Arguments> every(List<String> scenarios, List<String> formats) {
    List<Arguments> all = new ArrayList<>();
    for (String scenario : scenarios) {
      for (ListKind kind : ListKind.values()) {
        formats.forEach(format -> all.add(Arguments.of(scenario, kind.word(), format)));
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("texts")
  void a_list_reads_as_expected_on_a_terminal(String scenario, String list, String format) {
    String text = list(scenario, list, format);

    Golden.compare("lists/" + scenario + "/" + list + ".txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @MethodSource("others")
  void a_list_is_as_expected_in_every_format(String scenario, String list, String format) {
    Golden.compare("lists/" + scenario + "/" + list + "." + format, list(scenario, list, format));
  }

  @ParameterizedTest
  @MethodSource("inEveryFormat")
  void a_folder_holds_the_same_lists_and_the_proposal(String scenario, @TempDir Path empty)
      throws IOException {
    Path folder = empty.resolve("job");
    Run.of("propose", site(scenario), "--out", folder.toString()).endedWith(ExitStatus.ANSWERED);

    Golden.compare("lists/" + scenario + "/out.txt", names(folder));
    for (String list : List.of("cut-list", "buying", "set-out", "order", "climbers", "upkeep")) {
      assertThat(folder.resolve(list + ".csv")).hasContent(list(scenario, list, "csv"));
      assertThat(folder.resolve(list + ".json")).hasContent(list(scenario, list, "json"));
    }
    assertThat(folder.resolve("proposal.json")).hasContent(proposal(scenario, "json"));
    for (String sheet : List.of("index", "client", "builder")) {
      String page = Files.readString(folder.resolve(sheet + ".html"));
      Golden.compare("sheets/" + scenario + "/" + sheet + ".html", undrawn(page));
    }
  }

  /** A page without its drawings and its style, which are looked at elsewhere. */
  private static String undrawn(String page) {
    return page.replaceAll("(?s)<style>.*?</style>", "<style></style>")
        .replaceAll("(?s)<svg.*?</svg>\n?", "<svg></svg>")
        .replaceAll("scantling [^ ]+, a builder", "scantling, a builder");
  }

  static List<String> inEveryFormat() {
    return IN_EVERY_FORMAT;
  }

  @Test
  void what_needs_an_engineer_has_no_lists_and_no_folder(@TempDir Path empty) {
    Path folder = empty.resolve("job");
    String site = site("too-much-snow");

    Run list = Run.of("propose", site, "--list", "cut-list").endedWith(ExitStatus.NEEDS_ENGINEER);
    Run.of("propose", site, "--out", folder.toString()).endedWith(ExitStatus.NEEDS_ENGINEER);

    assertThat(list.out()).isEmpty();
    assertThat(list.err()).contains("engineer");
    assertThat(folder).doesNotExist();
  }

  private static String list(String scenario, String list, String format) {
    return Run.of("propose", site(scenario), "--list", list, "--format", format)
        .endedWith(ExitStatus.ANSWERED)
        .out();
  }

  private static String proposal(String scenario, String format) {
    return Run.of("propose", site(scenario), "--format", format)
        .endedWith(ExitStatus.ANSWERED)
        .out();
  }

  private static String site(String scenario) {
    String folder = RARER.contains(scenario) ? "src/test/resources/rulecases/sites/" : "scenarios/";
    return folder + scenario + ".yaml";
  }

  private static String names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      StringBuilder names = new StringBuilder();
      files
          .map(file -> file.getFileName().toString())
          .sorted()
          .forEach(name -> names.append(name).append('\n'));
      return names.toString();
    }
  }
}
