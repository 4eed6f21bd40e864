package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Span tables from the command line. */
class SpansCommandTest {
  private static final String[] OPEN_TOP = {
    "spans",
    "crossbeams",
    "--top-edge",
    "free",
    "--person",
    "200 lb",
    "--own-weight",
    "added",
    "--notch",
    "1/2 in",
    "--support",
    "3.5 in",
    "--species",
    "southern-pine,hem-fir"
  };
  private static final String[] HEADERS = {
    "spans", "headers", "--size", "4x4,4x6,2-2x6,2-2x8", "--tributary", "3 ft,4 ft,5 ft"
  };
  private static final String[] POSTS = {"spans", "posts", "--push", "60 lb"};
  private static final String[] HEIGHTS = {
    "spans", "posts", "--height", "2.1 m,2.4 m", "--units", "metric", "--top", "held"
  };

  static Stream<List<String>> tables() {
    return Stream.of(
        Arrays.asList("spans-open-top", String.join("|", OPEN_TOP)),
        Arrays.asList("spans-headers", String.join("|", HEADERS)),
        Arrays.asList("spans-posts", String.join("|", POSTS)),
        Arrays.asList("spans-heights", String.join("|", HEIGHTS)),
        Arrays.asList("spans-crossbeams", "spans|crossbeams"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void tables_read_as_expected_and_fit_a_terminal(List<String> table) {
    String text = Run.of(table.get(1).split("\\|", -1)).endedWith(0).out();
    Golden.compare(table.get(0) + ".txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @CsvSource({"json, json", "markdown, md", "csv, csv"})
  void the_same_table_is_written_for_others(String format, String ending) {
    String[] asked = Arrays.copyOf(HEADERS, HEADERS.length + 2);
    asked[HEADERS.length] = "--format";
    asked[HEADERS.length + 1] = format;
    Golden.compare("spans-headers." + ending, Run.of(asked).endedWith(0).out());
  }

  @Test
  void a_table_is_of_the_open_top_that_the_engine_checks_and_a_decked_one_is_asked_for() {
    String[] asked = {"spans", "crossbeams", "--size", "2x6", "--spacing", "12 in"};
    String open = Run.of(asked).endedWith(0).out();
    assertThat(open).contains("free from support to support", "or one person of 200 lb", "9'-4\"");

    String[] mild = Arrays.copyOf(asked, asked.length + 6);
    System.arraycopy(
        new String[] {"--top-edge", "held", "--person", "0 lb", "--own-weight", "included"},
        0,
        mild,
        asked.length,
        6);
    String decked = Run.of(mild).endedWith(0).out();
    assertThat(decked).contains("held from rolling over", "12'-5\"").doesNotContain("person of");
  }

  @Test
  void the_repetitive_factor_is_for_decked_tops_so_it_asks_for_one() {
    // NDS 4.3.9: members that a floor, a roof or another load-distributing element joins.
    String decked =
        Run.of("spans", "crossbeams", "--size", "2x6", "--repetitive").endedWith(0).out();
    assertThat(decked).contains("held from rolling over").doesNotContain("person of");
  }

  @Test
  void many_columns_are_broken_into_blocks_that_fit() {
    String text =
        Run.of(
                "spans",
                "crossbeams",
                "--size",
                "2x6",
                "--spacing",
                "8in,10in,12in,14in,16in,20in,24in")
            .endedWith(0)
            .out();
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text)
        .containsPattern("8 in +10 in +12 in +14 in +16 in\n")
        .containsPattern("20 in +24 in\n");
  }

  @Test
  void the_assumptions_for_programs_are_those_that_were_asked_for() {
    JsonNode assumptions =
        json(
                "spans",
                "crossbeams",
                "--dead",
                "0.5 kPa",
                "--duration",
                "1.15",
                "--deflection-live",
                "360",
                "--deflection-total",
                "none",
                "--service",
                "dry",
                "--incised",
                "--repetitive",
                "--notch",
                "10 mm",
                "--format",
                "json")
            .get("assumptions");
    assertThat(assumptions.get("deadPsf").asDouble()).isEqualTo(10.443);
    assertThat(assumptions.get("livePsf").asDouble()).isEqualTo(20);
    assertThat(assumptions.get("loadDuration").asDouble()).isEqualTo(1.15);
    assertThat(assumptions.get("deflectionLive").asDouble()).isEqualTo(360);
    assertThat(assumptions.get("deflectionTotal").isNull()).isTrue();
    assertThat(assumptions.get("service").asString()).isEqualTo("dry");
    assertThat(assumptions.get("creepFactor").asDouble()).isEqualTo(1.5);
    assertThat(assumptions.get("incised").asBoolean()).isTrue();
    assertThat(assumptions.get("repetitiveFactor").asDouble()).isEqualTo(1.15);
    assertThat(assumptions.get("notchIn").asDouble()).isEqualTo(0.394);
  }

  @Test
  void wider_spacing_heavier_load_and_a_stricter_limit_never_reach_farther() {
    double easy = span("--spacing", "12 in");
    assertThat(span("--spacing", "16 in")).isLessThan(easy);
    assertThat(span("--spacing", "12 in", "--live", "40 psf")).isLessThan(easy);
    assertThat(span("--spacing", "12 in", "--deflection-live", "480")).isLessThan(easy);
    assertThat(span("--spacing", "12 in", "--incised")).isLessThan(easy);
    assertThat(span("--spacing", "12 in", "--notch", "0.5 in")).isLessThanOrEqualTo(easy);
    assertThat(span("--spacing", "12 in", "--service", "dry", "--repetitive")).isGreaterThan(easy);
  }

  private static double span(String... options) {
    // Decked, so that the even load and the sag govern and not one person.
    String[] fixed = {
      "spans", "crossbeams", "--size", "2x8", "--format", "json",
      "--top-edge", "held", "--person", "0 lb", "--own-weight", "included"
    };
    List<String> words = Stream.concat(Stream.of(fixed), Stream.of(options)).toList();
    return json(words.toArray(String[]::new)).get("rows").get(0).get("spanIn").asDouble();
  }

  private static JsonNode json(String... asked) {
    return new JsonMapper().readTree(Run.of(asked).endedWith(0).out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "crosbeam | ROLE: crosbeam must be crossbeams, headers or posts. Maybe crossbeams?",
        "crossbeams,--size,2x7 | Maybe 2x6 or 2x8?",
        "crossbeams,--size,joist | --size: joist is not a size in the table. For crossbeams there are 2x4,",
        "crossbeams,--species,southern-pin | Maybe southern-pine?",
        "crossbeams,--grade,No2 | Maybe No.2?",
        "crossbeams,--dead,10 | --dead: 10 (no unit) must be a load with its unit",
        "crossbeams,--live,-5 psf | --live: -5 psf must be a load with its unit",
        "crossbeams,--live,16 in | wrong kind of unit: this is a length",
        "crossbeams,--spacing,0 in | --spacing: 0 in must be a length with its unit",
        "crossbeams,--duration,9 | --duration: 9 must be a factor from 0.9 to 2.0",
        "crossbeams,--duration,NaN | --duration: NaN must be a number of 0 or more",
        "crossbeams,--deflection-total,maybe | must be none, or a number such as 240",
        "crossbeams,--service,damp | --service: damp must be dry or wet",
        "crossbeams,--tributary,3 ft | --tributary: is for headers and posts only",
        "headers,--spans,1.5 | --spans: 1.5 must be a whole number of 1 or more",
        "headers,--shear,depth,--notch,1/2 in | --shear: depth is for one span under even load",
        "posts,--height,7 ft,--tributary,20 sq ft | leave it or --tributary out",
        "posts,--top,held,--push,40 lb | --push: a post whose top is held is not pushed",
        "posts,--tributary,20 ft | wrong kind of unit: this is a length",
        "crossbeams,--dead,0 psf,--live,0 psf,--person,0 lb | so that there is nothing to carry",
      })
  void what_cannot_be_is_told_with_what_can(String words, String told) {
    String[] asked =
        Stream.concat(Stream.of("spans"), Stream.of(words.split(",", -1))).toArray(String[]::new);
    Run run = Run.of(asked).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.err()).contains(told).doesNotContain("Exception", "\tat ");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void everything_that_is_wrong_is_told_at_once() {
    assertThat(
            Run.of("spans", "crossbeams", "--size", "2x7", "--grade", "No2", "--dead", "10")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err()
                .lines()
                .filter(line -> line.startsWith("--")))
        .hasSize(3);
  }
}
