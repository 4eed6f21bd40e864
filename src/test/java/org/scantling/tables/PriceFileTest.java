package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read of a list of prices, and how every line that cannot be used is told. */
class PriceFileTest {
  private static final Tables TABLES = Tables.load();
  private static final String HEADING = "item,unit,price,currency,note\n";

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("prices.csv"), text);
  }

  private PriceList read(String text) throws IOException {
    return PriceFile.read(file(text), TABLES, Optional.empty());
  }

  private static ItemKey post(String treatment, String species, String grade) {
    return new ItemKey(
        "6x6x14", new Yard.Made(Optional.of(treatment), Optional.of(species), Optional.of(grade)));
  }

  @Test
  void prices_are_read_exactly_remarks_and_empty_prices_left_out() throws IOException {
    PriceList prices =
        read(
            "# ours\n"
                + HEADING
                + "4x4x10,each,\"1,014.50\",usd,dear\n# a remark\nstake,each,,,\nwasher.1-2,each,0.385,,\n"
                + "tax,percent,8.875,,\n");

    assertThat(prices.currency()).isEqualTo("USD");
    assertThat(prices.list())
        .containsExactly(
            new Price(3, ItemKey.of("4x4x10"), "each", new BigDecimal("1014.50")),
            new Price(6, ItemKey.of("washer.1-2"), "each", new BigDecimal("0.385")),
            new Price(7, ItemKey.of("tax"), "percent", new BigDecimal("8.875")));
  }

  @Test
  void columns_stand_in_any_order_and_those_that_say_nothing_may_be_left_out() throws IOException {
    assertThat(read("price,item,unit\n6.5,tax,percent\n").of("tax"))
        .map(Price::amount)
        .contains(new BigDecimal("6.5"));
  }

  @Test
  void of_two_prices_that_serve_a_stick_the_one_that_says_more_of_it_is_taken() throws IOException {
    PriceList prices =
        read(
            HEADING
                + "6x6x14,each,40,CAD,\n6x6x14 UC4B,each,44,,\n6x6x14 uc4b doug fir,each,48,,\n"
                    .replace("doug fir", "douglas-fir-larch")
                + "6x6x14 #2,each,43,,\n");

    assertThat(prices.of(post("UC4B", "southern-pine", "No.2")).orElseThrow().line()).isEqualTo(3);
    assertThat(prices.of(post("UC4B", "douglas-fir-larch", "No.2")).orElseThrow().line())
        .isEqualTo(4);
    assertThat(prices.of(post("UC3B", "southern-pine", "No.2")).orElseThrow().line()).isEqualTo(5);
    assertThat(prices.of(post("UC3B", "southern-pine", "No.1")).orElseThrow().line()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"4x4x10", "4x4x98.5in", "45x95x3000", "rod.1-2.12-1-2", "nut.5-8"})
  void sticks_and_what_is_cut_to_measure_need_no_row_of_their_own(String item) throws IOException {
    assertThat(read(HEADING + item + ",each,1,USD,\n").list()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "stakes,each,1,USD,     | item     | stakes | an item that can be priced, such as stake;",
        "4x5x10,each,1,USD,     | item     | 4x5x10 | a size and a length sold, such as 4x4x10",
        "4x4x10 oak,each,1,USD, | item     | 4x4x10 oak | a size and a length alone, or with any of",
        "4x4x10,box,1,USD,      | unit     | box    | one of each",
        "labor-hour,day,1,USD,  | unit     | day    | one of hour",
        "gravel,,1,USD,         | unit     |        | one of 50 lb bag, 25 kg bag, cu yd, cu ft, m3",
        "stake,each,-1,USD,     | price    | -1     | an amount such as 12.95 or 1295, zero or more",
        "stake,each,$2,USD,     | price    | $2     | an amount such as 12.95 or 1295, zero or more",
        "stake,each,1e3,USD,    | price    | 1e3    | an amount such as 12.95 or 1295, zero or more",
        "stake,each,100001,USD, | price    | 100001 | zero or more and not above 100000",
        "tax,percent,-5,,       | price    | -5     | a percentage such as 8.25, zero or more",
        "tax,percent,101,,      | price    | 101    | from 0 to 100",
        "stake,each,1,dollars,  | currency | dollars | a currency by its three letters",
        "stake,each,1,,         | currency |        | a currency by its three letters"
      })
  void a_line_that_cannot_be_used_is_told_with_its_place_and_what_would_be_right(
      String line, String column, String found, String accepted) throws IOException {
    Path file = file(HEADING + line + "\n");
    YardException wrong =
        catchThrowableOfType(
            YardException.class, () -> PriceFile.read(file, TABLES, Optional.empty()));

    assertThat(wrong.problems()).hasSize(1);
    TableException only = wrong.problems().get(0);
    assertThat(only.line()).isEqualTo(2);
    assertThat(only.column()).isEqualTo(column);
    assertThat(only.found()).isEqualTo(found == null ? "" : found);
    assertThat(only.accepted()).startsWith(accepted);
  }

  @Test
  void a_decimal_comma_is_told_as_what_it_means() {
    assertThatThrownBy(() -> read(HEADING + "stake,each,\"14,85\",USD,\n"))
        .hasMessageContaining("Maybe 14.85?");
  }

  @Test
  void two_currencies_are_refused_at_the_second() {
    assertThatThrownBy(() -> read(HEADING + "stake,each,1,USD,\npad,each,2,CAD,\n"))
        .hasMessageEndingWith(
            "prices.csv:3: currency: found 'CAD', accepted is one currency in the whole file: USD,"
                + " as line 2 has it");
  }

  @Test
  void an_item_priced_twice_is_refused_also_where_its_words_are_turned_round() {
    assertThatThrownBy(
            () -> read(HEADING + "4x4x10 UC4B No.2,each,9,USD,\n4x4x10 no2 uc4b,each,9,USD,\n"))
        .hasMessageEndingWith(
            "prices.csv:3: item: found '4x4x10 no2 uc4b', accepted is each item once; line 2 has"
                + " it");
  }

  @Test
  void a_stick_that_the_yard_has_a_price_for_gets_no_second_one() throws IOException {
    Yard yard =
        new Yard(
            "yard.csv",
            java.util.List.of(new Yard.Offer("4x4", 120, java.util.OptionalLong.of(900))));
    Path file = file(HEADING + "4x4x10,each,9,USD,\n4x4x12,each,11,USD,\n");

    assertThatThrownBy(() -> PriceFile.read(file, TABLES, Optional.of(yard)))
        .hasMessage(
            file
                + ":2: price: found '9', accepted is nothing: the yard's list (yard.csv) has a price"
                + " for it already");
  }

  @Test
  void everything_wrong_is_told_at_once() throws IOException {
    Path file = file(HEADING + "stakes,each,1,USD,\npad,box,1,EUR,\n,,,,\nshort\n");
    YardException wrong =
        catchThrowableOfType(
            YardException.class, () -> PriceFile.read(file, TABLES, Optional.empty()));

    assertThat(wrong.problems()).extracting(TableException::line).containsExactly(2, 3, 3, 5);
  }

  @ParameterizedTest
  @CsvSource({"'item,price\n', unit", "'item,unit\n', price", "'unit,price\n', item"})
  void a_heading_without_a_column_that_is_needed_is_told(String heading, String column) {
    assertThatThrownBy(() -> read(heading + "a,b\n"))
        .hasMessageContaining(":1: " + column + ": found")
        .hasMessageEndingWith("accepted is a column of that name");
  }
}
