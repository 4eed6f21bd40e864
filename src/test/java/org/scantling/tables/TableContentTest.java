package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.reasons.SourceKind;

/** What holds for every table: schema, ids, sources, words. */
class TableContentTest {
  private static final Path FOLDER = Path.of("rules", "tables");

  private static CsvFile file(String name) {
    try (var in = Files.newInputStream(FOLDER.resolve(name))) {
      return CsvFile.read(name, in);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static List<Row> rows(TableFile table) {
    CsvFile file = file(table.fileName());
    return List.copyOf(
        TableReader.own(file, table, Sources.read(file(TableFile.SOURCES))).values());
  }

  private static Stream<Row> allRows() {
    return Stream.of(TableFile.values()).flatMap(table -> rows(table).stream());
  }

  @Test
  void only_depth_in_the_ground_and_sway_can_be_eased_by_a_record() {
    assertThat(Tables.load().checks().rows())
        .filteredOn(CheckRow::easedByRecord)
        .extracting(CheckRow::id)
        .containsExactlyInAnyOrder("footing.embedment", "post.drift");
  }

  @Test
  void the_folder_holds_these_tables_and_nothing_else() throws IOException {
    Set<String> expected = new TreeSet<>();
    expected.add(TableFile.SOURCES);
    for (TableFile table : TableFile.values()) {
      expected.add(table.fileName());
    }
    try (Stream<Path> entries = Files.list(FOLDER)) {
      assertThat(entries.map(p -> p.getFileName().toString()).filter(n -> !n.startsWith(".")))
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  @ParameterizedTest
  @EnumSource(TableFile.class)
  void the_heading_is_the_schema_in_order(TableFile table) {
    assertThat(file(table.fileName()).heading().cells()).containsExactly(table.columns());
  }

  @Test
  void every_table_can_be_read_and_has_rows() {
    Tables tables = Tables.load().readAll();
    assertThat(tables.thumbs().rows()).hasSizeGreaterThan(70);
    assertThat(tables.adjustmentFactors().rows()).hasSizeGreaterThan(100);
    assertThat(tables.frostPlaces().rows()).hasSizeGreaterThan(60);
    assertThat(tables.checks().rows()).hasSizeGreaterThan(40);
  }

  @Test
  void ids_are_words_with_dots_and_dashes() {
    assertThat(allRows().map(row -> row.text("id")))
        .allMatch(id -> id.matches("[A-Za-z0-9]+([.-][A-Za-z0-9]+)*"), "a plain id");
  }

  @Test
  void common_practice_cites_practice_and_has_no_status_and_nothing_else_does() {
    List<Row> practice =
        allRows().filter(row -> row.text("kind").equals("common-practice")).toList();
    assertThat(practice).hasSizeGreaterThan(100);
    assertThat(practice).allMatch(row -> row.text("status").equals("none"));
    assertThat(practice)
        .allMatch(row -> row.source().citation().equals("common practice, no source"));
    assertThat(
            allRows()
                .filter(row -> !row.text("kind").equals("common-practice"))
                .filter(row -> !row.text("kind").equals("calculation")))
        .allMatch(row -> !row.text("status").equals("none"));
  }

  /** Areas, sums and moments are nobody's habit. */
  @Test
  void what_is_calculated_cites_statics_and_is_a_working_or_one_of_its_symbols() {
    List<Row> calculated = allRows().filter(row -> row.text("kind").equals("calculation")).toList();
    assertThat(calculated).hasSizeGreaterThan(50);
    assertThat(calculated).allMatch(row -> row.text("status").equals("none"));
    assertThat(calculated).allMatch(row -> row.source().text().equals("statics"));
    assertThat(calculated)
        .allMatch(row -> List.of("workings.csv", "symbols.csv").contains(row.fileName()));
  }

  @Test
  void what_is_recalled_says_so_and_what_was_seen_does_not() {
    List<Row> recalled = allRows().filter(row -> row.text("status").equals("memory")).toList();
    assertThat(recalled).hasSizeGreaterThan(100);
    assertThat(recalled).allMatch(row -> row.source().text().endsWith(", from memory"));
    assertThat(allRows().filter(row -> !row.text("status").equals("memory")))
        .noneMatch(row -> row.source().text().contains("from memory"));
  }

  @Test
  void what_was_read_in_a_copy_says_so_and_nothing_else_does() {
    List<Row> second = allRows().filter(row -> row.text("status").equals("second-hand")).toList();
    assertThat(second).hasSizeGreaterThan(70);
    assertThat(second).allMatch(row -> row.source().text().endsWith(", seen at second hand"));
    assertThat(allRows().filter(row -> !row.text("status").equals("second-hand")))
        .noneMatch(row -> row.source().text().contains("at second hand"));
  }

  /** Douglas fir-larch posts: two copies print 750 psi, another agency 700 (from memory). */
  @Test
  void where_grading_agencies_differ_the_lower_value_is_taken_and_stays_from_memory() {
    DesignValueRow post = Tables.load().designValues("douglas-fir-larch", "No.2", sizeOf("6x6"));
    assertThat(post.bendingPsi()).isEqualTo(700);
    assertThat(post.source().fromMemory()).isTrue();
  }

  private static SizeRow sizeOf(String size) {
    return Tables.load().size(size);
  }

  @Test
  void every_source_is_used_and_every_used_source_is_there() {
    Set<String> used = new TreeSet<>();
    allRows().forEach(row -> used.add(row.text("source")));
    rows(TableFile.SOILS).forEach(row -> used.add(row.optional("thermal_source")));
    rows(TableFile.SOILS).forEach(row -> used.add(row.optional("stiffening_source")));
    rows(TableFile.USERS).forEach(row -> used.add(row.text("headroom_source")));
    rows(TableFile.EXPOSURE).forEach(row -> used.add(row.text("snow_source")));
    used.remove("");
    assertThat(Sources.read(file(TableFile.SOURCES)).citations().keySet())
        .containsExactlyInAnyOrderElementsOf(used);
  }

  @Test
  void no_page_address_stands_in_a_table() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> entries = Files.list(FOLDER)) {
      for (Path entry : entries.toList()) {
        lines.addAll(Files.readAllLines(entry));
      }
    }
    assertThat(lines)
        .noneMatch(
            line ->
                line.toLowerCase(Locale.ROOT)
                    .matches(".*(https?:|www\\.|\\.(com|org|gov)\\b|forum|blog|magazine).*"));
  }

  @Test
  void a_citation_names_document_and_place() {
    NumberRow headroom = Tables.load().thumb("headroom.least");
    assertThat(headroom.source().kind()).isEqualTo(SourceKind.STANDARD);
    assertThat(headroom.source().text())
        .isEqualTo("2010 ADA Standards for Accessible Design, 307.4");
  }

  @Test
  void no_number_id_stands_in_two_tables() {
    Set<String> seen = new TreeSet<>();
    for (TableFile table :
        List.of(TableFile.THUMB, TableFile.SNOW, TableFile.WIND, TableFile.LIVE)) {
      for (Row row : rows(table)) {
        assertThat(seen.add(row.text("id"))).as(row.text("id")).isTrue();
      }
    }
  }
}
