package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read of a yard's list, and how every line that cannot be used is told. */
class YardFileTest {
  private static final Tables TABLES = Tables.load();

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("yard.csv"), text);
  }

  private Yard read(String text) throws IOException {
    return YardFile.read(file(text), TABLES);
  }

  @Test
  void lengths_and_prices_are_read_line_by_line() throws IOException {
    Yard yard = read("size,length,price\n4x4,10 ft,14.5\n4x4,8'-6\",\n2x6,2.4 m,9\n");

    assertThat(yard.of("4x4"))
        .containsExactly(
            new Yard.Offer("4x4", 120, OptionalLong.of(1450)),
            new Yard.Offer("4x4", 102, OptionalLong.empty()));
    assertThat(yard.of("2x6").get(0).lengthIn()).isEqualTo(2400 / 25.4);
    assertThat(yard.of("2x6").get(0).cents()).hasValue(900);
    assertThat(yard.of("6x6")).isEmpty();
  }

  @Test
  void prices_may_be_left_out_altogether_and_columns_stand_in_any_order() throws IOException {
    assertThat(read("length,size\n12 ft,2x4\n").offers())
        .containsExactly(new Yard.Offer("2x4", 144, OptionalLong.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "board;how long;cost | size   | board, how long, cost",
        "size;price          | length | size, price"
      })
  void a_heading_without_a_column_that_is_needed_is_told_as_it_was_found(
      String heading, String column, String found) throws IOException {
    Path file = file(heading.replace(';', ',') + "\n4x4,10 ft,5\n");
    assertThatThrownBy(() -> YardFile.read(file, TABLES))
        .isInstanceOf(YardException.class)
        .hasMessage(
            file + ":1: " + column + ": found '" + found + "', accepted is a column of that name");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "4x4,10 ft,-3     | price  | -3      | an amount such as 12.95 or $1,295.00, or nothing",
        "4x4,10 ft,1.999  | price  | 1.999   | an amount such as 12.95 or $1,295.00, or nothing",
        "4x4,10 ft,NaN    | price  | NaN     | an amount such as 12.95 or $1,295.00, or nothing",
        "4x4,10 ft,1e3    | price  | 1e3     | an amount such as 12.95 or $1,295.00, or nothing",
        "4x4,10 ft,0      | price  | 0       | above 0 and not above 100000, or nothing",
        "4x4,10 ft,100001 | price  | 100001  | above 0 and not above 100000, or nothing",
        "4x4,11 in,       | length | 11 in   | from 1 ft to 60 ft",
        "4x4,61 ft,       | length | 61 ft   | from 1 ft to 60 ft",
        "4x4,-10 ft,      | length | -10 ft  | from 1 ft to 60 ft"
      })
  void a_cell_that_cannot_be_is_told_with_its_line_and_field(
      String line, String field, String found, String accepted) throws IOException {
    Path file = file("size,length,price\n2x4,8 ft,5\n" + line + "\n");
    assertThatThrownBy(() -> YardFile.read(file, TABLES))
        .isInstanceOf(YardException.class)
        .hasMessage(file + ":3: " + field + ": found '" + found + "', accepted is " + accepted);
  }

  @Test
  void a_bare_number_is_no_length() throws IOException {
    assertThatThrownBy(() -> read("size,length\n4x4,10\n"))
        .hasMessageContaining(":2: length: found '10', accepted is");
  }

  @Test
  void an_unknown_size_is_told_with_all_that_there_are() throws IOException {
    assertThatThrownBy(() -> read("size,length\n4x5,10 ft\n"))
        .hasMessageContaining(":2: size: found '4x5', accepted is a size that the sizes table has")
        .hasMessageContaining("4x4, ");
  }

  @Test
  void a_length_that_stands_twice_is_told_with_its_first_line() throws IOException {
    assertThatThrownBy(() -> read("size,length\n4x4,10 ft\n2x4,10 ft\n4x4,120 in\n"))
        .hasMessageContaining(":4: length")
        .hasMessageContaining("each length of a size once; line 2 has it");
  }

  @Test
  void lines_of_one_size_and_length_are_told_apart_by_treatment_species_and_grade()
      throws IOException {
    Yard yard =
        read(
            "size,length,price,treatment,species,grade\n"
                + "6x6,10 ft,60,UC4B,,\n6x6,10 ft,40,UC3B,hem-fir,No.1\n6x6,10 ft,30,,,\n");

    assertThat(yard.of("6x6"))
        .extracting(Yard.Offer::made)
        .containsExactly(
            new Yard.Made(Optional.of("UC4B"), Optional.empty(), Optional.empty()),
            new Yard.Made(Optional.of("UC3B"), Optional.of("hem-fir"), Optional.of("No.1")),
            Yard.Made.ANY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "UC5A,,     | treatment | UC5A   | one of UC4B, UC3B, heartwood, or nothing for any",
        ",oak,      | species   | oak    | one of",
        ",,Premium  | grade     | Premium| one of"
      })
  void a_kind_that_nobody_asks_for_is_told_with_its_line_and_field(
      String kind, String field, String found, String accepted) throws IOException {
    Path file = file("size,length,treatment,species,grade\n4x4,10 ft," + kind + "\n");
    assertThatThrownBy(() -> YardFile.read(file, TABLES))
        .isInstanceOf(YardException.class)
        .hasMessageStartingWith(
            file + ":2: " + field + ": found '" + found + "', accepted is " + accepted);
  }

  @Test
  void a_length_of_one_kind_that_stands_twice_is_told_with_its_first_line() throws IOException {
    assertThatThrownBy(
            () -> read("size,length,treatment\n4x4,10 ft,UC4B\n4x4,10 ft,\n4x4,120 in,UC4B\n"))
        .hasMessageContaining(":4: length")
        .hasMessageContaining("each length of a size once; line 2 has it");
  }

  @Test
  void everything_wrong_is_told_at_once() throws IOException {
    Path file = file("size,length,price\n4x5,10,-1\n2x4,8 ft,x\n");
    YardException all =
        catchThrowableOfType(YardException.class, () -> YardFile.read(file, TABLES));

    assertThat(all.problems())
        .extracting(TableException::line, TableException::column)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(2, "size"),
            org.assertj.core.groups.Tuple.tuple(2, "length"),
            org.assertj.core.groups.Tuple.tuple(2, "price"),
            org.assertj.core.groups.Tuple.tuple(3, "price"));
  }

  @Test
  void a_list_without_lines_or_without_its_columns_is_refused() throws IOException {
    assertThatThrownBy(() -> read("size,length\n")).hasMessageContaining("at least one line");
    assertThatThrownBy(() -> read("size,price\n4x4,10\n"))
        .hasMessageContaining(":1: length: found 'size, price', accepted is a column of that name");
    assertThatThrownBy(() -> read("length,price\n10 ft,10\n")).hasMessageContaining("size");
  }

  @Test
  void a_file_that_is_missing_a_folder_or_huge_is_refused() throws IOException {
    Path missing = folder.resolve("none.csv");
    assertThatThrownBy(() -> YardFile.read(missing, TABLES))
        .hasMessage(missing + ": found 'no such file', accepted is a CSV file that can be read");
    assertThatThrownBy(() -> YardFile.read(folder, TABLES))
        .hasMessageContaining("found 'a folder or device'");
    String line = "4x4,10 ft\n";
    assertThatThrownBy(() -> read("size,length\n" + line.repeat((1 << 20) / line.length() + 1)))
        .hasMessageContaining("over 1 MiB");
  }
}
