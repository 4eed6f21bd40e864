package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.scantling.tables.Tables;

/**
 * The world outside against the program: every row of verification/rows is computed here, once, and
 * target/verification-report.md says how near each source was met.
 */
class VerificationPackTest {
  private static final int LEAST_VALUES = 150;
  private static final int LEAST_SOURCES = 12;
  private static final double MOST_FROM_MEMORY_RATIO = 0.25;

  private static List<Outcome> outcomes;
  private static Quantities quantities;
  private static VerificationReport report;

  @BeforeAll
  static void compute_every_row_and_report() throws IOException {
    quantities = new Quantities(Tables.load());
    outcomes = Pack.rows().stream().map(row -> Outcome.of(row, quantities)).toList();
    report = new VerificationReport(outcomes, Pack.sources(), Pack.notReproduced());
    Files.writeString(Path.of("target", "verification-report.md"), report.markdown());
  }

  @TestFactory
  Stream<DynamicContainer> a_published_value_is_met() {
    return outcomes.stream()
        .collect(Collectors.groupingBy(o -> o.row().file(), TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(
            file ->
                dynamicContainer(
                    file.getKey(),
                    file.getValue().stream()
                        .map(one -> dynamicTest(one.row().id(), () -> check(one)))));
  }

  private static void check(Outcome one) {
    one.fault()
        .ifPresent(
            fault -> {
              throw new AssertionError(one.row() + ": " + fault.getMessage(), fault);
            });
    PackRow row = one.row();
    assertThat(one.met())
        .as(
            "%s, %s %s, %s: %s must be %s %s within %s, ours is %s (%s)",
            row,
            row.source(),
            row.edition(),
            row.table(),
            row.quantity(),
            row.expected(),
            row.unit(),
            row.tolerance(),
            one.ours(),
            row.reason())
        .isTrue();
  }

  @Test
  void no_row_fails() {
    assertThat(outcomes).filteredOn(one -> !one.met()).extracting(Outcome::row).isEmpty();
  }

  @Test
  void every_row_says_where_it_is_from_and_why_it_is_allowed_to_differ() {
    List<String> known = Pack.sources().stream().map(Pack.Source::name).toList();
    assertThat(outcomes)
        .extracting(Outcome::row)
        .allSatisfy(
            row -> {
              assertThat(row.id()).isNotBlank();
              assertThat(known).as("source of %s", row).contains(row.source());
              assertThat(row.edition()).as("edition of %s", row).isNotBlank();
              assertThat(row.table()).as("table of %s", row).isNotBlank();
              assertThat(row.status()).isIn("seen", "second-hand", "memory", "computed");
              assertThat(row.tolerance()).as("tolerance of %s", row).isPositive();
              assertThat(row.scale()).as("scale of %s", row).isPositive();
              assertThat(row.reason()).as("reason of %s", row).isNotBlank();
            });
    assertThat(outcomes).extracting(o -> o.row().id()).doesNotHaveDuplicates();
  }

  @Test
  void a_wide_tolerance_is_explained_by_more_than_rounding_unless_the_print_is_coarse() {
    assertThat(outcomes)
        .extracting(Outcome::row)
        .filteredOn(VerificationReport::wide)
        .allSatisfy(row -> assertThat(row.reason()).as("reason of %s", row).hasSizeGreaterThan(15));
  }

  @Test
  void no_published_cell_is_counted_twice() {
    assertThat(outcomes)
        .extracting(Outcome::row)
        .extracting(
            row -> List.of(row.source(), row.edition(), row.table(), row.quantity(), row.given()))
        .doesNotHaveDuplicates();
  }

  @Test
  void the_pack_is_large_and_broad_enough() {
    assertThat(outcomes.stream().filter(o -> o.row().printed()).count())
        .isGreaterThanOrEqualTo(LEAST_VALUES);
    assertThat(report.publishedSources()).isGreaterThanOrEqualTo(LEAST_SOURCES);
  }

  @Test
  void fewer_than_a_quarter_of_the_values_from_print_rest_on_memory() {
    double printed = outcomes.stream().filter(o -> o.row().printed()).count();
    double memory = outcomes.stream().filter(o -> o.row().fromMemory()).count();
    assertThat(memory / printed).isLessThan(MOST_FROM_MEMORY_RATIO);
  }

  @Test
  void every_way_of_computing_has_a_row_and_every_source_is_used() {
    assertThat(outcomes.stream().map(o -> o.row().quantity()).collect(Collectors.toSet()))
        .isEqualTo(quantities.names());
    assertThat(outcomes.stream().map(o -> o.row().source()).collect(Collectors.toSet()))
        .containsAll(Pack.sources().stream().map(Pack.Source::name).toList());
  }

  @Test
  void the_frames_of_the_second_program_agree_to_a_thousandth() {
    List<Outcome> frames =
        outcomes.stream().filter(o -> o.row().quantity().startsWith("frame ")).toList();
    assertThat(frames).hasSizeGreaterThan(300);
    assertThat(frames)
        .allSatisfy(one -> assertThat(one.differenceRatio()).as("%s", one.row()).isLessThan(1e-3));
  }
}
