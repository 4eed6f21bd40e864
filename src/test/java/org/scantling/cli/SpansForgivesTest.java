package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.words.RoleWords;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What people type who have not read the help is understood, or told how it is typed. */
class SpansForgivesTest {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern WORKS = Pattern.compile("This works: (scantling .*)");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "spans crossbeams --size 2x6 --spacing 16 in",
        "spans crossbeams 2x6 16 in",
        "spans crossbeam 2 x 6 16 in",
        "spans 2x6 crossbeams \"16 in\"",
        "spans 2x6 16 in",
        "spans 2×6 16in",
        "spans 16 in 2X6",
        "spans crossbeams --size \"2 x 6\" --spacing 16in",
        "spans crossbeams --size 2×6 --spacing 1 ft 4 in"
      })
  void the_same_is_understood_however_it_is_typed(String typed) {
    assertThat(run(typed + " --format json").endedWith(0).out())
        .isEqualTo(
            Run.of("spans", "crossbeams", "--size", "2x6", "--spacing", "16 in", "--format", "json")
                .out());
  }

  @Test
  void a_size_alone_is_told_for_each_role_that_has_it_crossbeams_first() {
    String text = run("spans 2x6").endedWith(0).out();

    assertThat(text).startsWith("Span table: crossbeams").contains("Span table: headers", "2-2x6");
    assertThat(text).doesNotContain("Span table: posts");
    assertThat(run("spans 6x6").endedWith(0).out()).contains("Span table: posts");
    List<String> roles = new ArrayList<>();
    json(run("spans 2x6 --format json"))
        .at("/tables")
        .forEach(table -> roles.add(table.at("/role").asString()));
    assertThat(roles).containsExactly("crossbeams", "headers");
  }

  @Test
  void an_option_of_one_role_picks_the_role_of_a_size_alone() {
    assertThat(json(run("spans 2x6 --tributary 4 ft --format json")).at("/role").asString())
        .isEqualTo("headers");
    assertThat(json(run("spans posts 4x4 6 ft --format json")).at("/rows/0/heightIn").asDouble())
        .isEqualTo(72);
  }

  @Test
  void the_conditions_of_an_open_top_stay_the_usual_ones() {
    assertThat(json(run("spans 2x6 16 in --format json")).at("/assumptions/topEdge").asString())
        .isEqualTo("free");
    assertThat(run("spans rafters 2x6").out()).contains("free from support to support");
  }

  @ParameterizedTest
  @CsvSource({"rafters,crossbeams", "joists,crossbeams", "beams,headers", "columns,posts"})
  void a_word_of_others_is_answered_by_ours_and_told_why(String word, String ours) {
    Run run = run("spans " + word).endedWith(0);

    assertThat(run.out().replaceAll("\\s+", " "))
        .matches("(?s).*are (?:called )?" + ours + ".*|(?s).*called " + ours + " here.*")
        .contains("Span table: " + ours);
    Run table = run("spans " + word + " --format json").endedWith(0);
    assertThat(json(table).at("/role").asString()).isEqualTo(ours);
    assertThat(table.err()).contains(ours);
  }

  static Stream<String> wrong() {
    return Stream.of(
        "spans",
        "spans 9x9",
        "spans crosbeams",
        "spans crossbeams --size 2x7",
        "spans crossbeams --spacing",
        "spans crossbeams --live 16 in",
        "spans 2x6 --format jsn",
        "spans crossbeams 2x6 --size 2x8",
        "spans crossbeams --spacin 16 in",
        "spans 2x6 --format csv",
        "depths --wind 999 mph",
        "depths --post 5x5",
        "depths --fill mud",
        "depths --set walkway.length=3m",
        "depths --colour red");
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void what_is_wrong_is_told_with_a_line_that_works_when_typed(String typed) {
    Run run = run(typed).endedWith(ExitStatus.WRONG_INPUT);
    Matcher line = WORKS.matcher(run.err());

    assertThat(line.find()).as(run.err()).isTrue();
    run(line.group(1).substring("scantling ".length())).endedWith(ExitStatus.ANSWERED);
  }

  @Test
  void every_example_of_the_help_works_when_typed() {
    for (String command : Commands.names()) {
      for (String line : Run.of(command, "--help").out().lines().toList()) {
        if (line.startsWith("  scantling ")) {
          run(line.strip().substring("scantling ".length())).endedWith(ExitStatus.ANSWERED);
        }
      }
    }
  }

  @Test
  void every_word_that_is_known_has_a_table() {
    StreamSupport.stream(RoleWords.read().all().spliterator(), false)
        .forEach(word -> run("spans " + word + " --format json").endedWith(ExitStatus.ANSWERED));
  }

  @Test
  void a_near_miss_that_is_suggested_works_when_typed() {
    Run run = run("spans crossbeams --size 2x7").endedWith(ExitStatus.WRONG_INPUT);
    Matcher maybe = Pattern.compile("Maybe (\\S+) or (\\S+)\\?").matcher(run.err());

    assertThat(maybe.find()).isTrue();
    run("spans crossbeams --size " + maybe.group(1)).endedWith(ExitStatus.ANSWERED);
    run("spans crossbeams --size " + maybe.group(2)).endedWith(ExitStatus.ANSWERED);
  }

  /** As a shell parts a line. */
  private static Run run(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return Run.of(words.toArray(String[]::new));
  }

  private static JsonNode json(Run run) {
    return JsonMapper.shared().readTree(run.out());
  }
}
