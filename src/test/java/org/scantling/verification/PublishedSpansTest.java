package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.cli.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * Published span tables through the command {@code spans}, under the assumptions that each states
 * or, where its row says so, that were found by trial. The column {@code given} holds the options.
 */
class PublishedSpansTest {
  private static final String FILE = "/verification/spans-command.csv";
  private static final double NEAR_IN = 1;
  private static final double NEAR_RATIO = 0.01;

  /** Some cells lie at half an inch exactly, and spans are cut off after a thousandth. */
  private static final double SLACK_IN = 0.001;

  record Printed(Map<String, String> cells) {
    double expectedIn() {
      return Double.parseDouble(cells.get("expected"));
    }

    double toleranceIn() {
      return Double.parseDouble(cells.get("tolerance"));
    }

    List<String> command() {
      List<String> words = new ArrayList<>(List.of("spans"));
      for (String pair : cells.get("given").split(";", -1)) {
        String[] option = pair.split("=", 2);
        if (option[0].equals("role")) {
          words.add(option[1]);
        } else {
          words.add("--" + option[0]);
          if (!option[1].equals("yes")) {
            words.add(option[1]);
          }
        }
      }
      words.addAll(List.of("--format", "json"));
      return words;
    }

    @Override
    public String toString() {
      return cells.get("id") + " " + cells.get("source") + ", " + cells.get("table");
    }
  }

  static List<Printed> rows() {
    CsvSchema schema = CsvSchema.emptySchema().withHeader();
    try (InputStream in = PublishedSpansTest.class.getResourceAsStream(FILE);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper().readerForMapOf(String.class).with(schema).readValues(in)) {
      return rows.readAll().stream().map(Printed::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void the_command_gives_the_printed_span(Printed printed) {
    String[] command = printed.command().toArray(String[]::new);
    JsonNode found = new JsonMapper().readTree(Run.of(command).endedWith(0).out());

    assertThat(found.get("rows")).hasSize(1);
    assertThat(found.get("rows").get(0).get("spanIn").asDouble())
        .as(String.join(" ", command))
        .isCloseTo(printed.expectedIn(), within(printed.toleranceIn() + SLACK_IN));
  }

  @Test
  void every_row_says_where_it_is_from_and_comes_within_an_inch_or_one_percent() {
    assertThat(rows())
        .allSatisfy(
            row -> {
              for (String column : List.of("source", "edition", "table", "reason")) {
                assertThat(row.cells().get(column)).as(column).isNotBlank();
              }
              assertThat(row.cells().get("status")).isIn("seen", "memory");
              assertThat(row.toleranceIn())
                  .isLessThanOrEqualTo(Math.max(NEAR_IN, NEAR_RATIO * row.expectedIn()));
            });
  }

  @Test
  void more_than_two_hundred_were_seen_in_print_and_the_rest_say_that_they_were_not() {
    Map<String, Long> byStatus =
        rows().stream()
            .collect(
                Collectors.groupingBy(row -> row.cells().get("status"), Collectors.counting()));

    assertThat(byStatus.get("seen")).isGreaterThanOrEqualTo(240);
    assertThat(byStatus.get("memory")).isEqualTo(23);
    assertThat(rows().stream().map(row -> row.cells().get("id"))).doesNotHaveDuplicates();
  }

  @Test
  void headers_and_crossbeams_are_both_compared() {
    assertThat(Arrays.asList("role=crossbeams", "role=headers"))
        .allSatisfy(
            role ->
                assertThat(rows())
                    .filteredOn(row -> row.cells().get("given").startsWith(role + ";"))
                    .hasSizeGreaterThan(60));
  }
}
