package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenPricesTest {
  private static final Tables TABLES = Tables.load();

  @TempDir private Path folder;

  private Yard read(String line) throws IOException {
    Path file = folder.resolve("yard.csv");
    Files.writeString(file, "size,length,price,species,grade\n" + line + "\n");
    return YardFile.read(file, TABLES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "$68 | 6800",
        "$ 12.95 | 1295",
        "\"$1,295.00\" | 129500",
        "\"1,295\" | 129500",
        "US$14.5 | 1450",
        "12.95 USD | 1295",
        "\u20ac9 | 900",
        "14.50 $ | 1450",
      })
  void money_is_read_as_the_yard_prints_it(String price, long cents) throws IOException {
    assertThat(read("4x4,10 ft," + price + ",,").of("4x4").get(0).cents()).hasValue(cents);
  }

  @ParameterizedTest
  @CsvSource({"4 x 4", "4X4", "4\u00d74", "4 by 4"})
  void a_size_is_read_as_the_yard_prints_it(String size) throws IOException {
    assertThat(read(size + ",10 ft,5,,").of("4x4")).hasSize(1);
  }

  @Test
  void species_and_grade_are_read_as_the_yard_prints_them() throws IOException {
    Yard.Offer offer = read("4x4,10 ft,5,SYP,#2").of("4x4").get(0);

    assertThat(offer.made().species()).hasValue("southern-pine");
    assertThat(offer.made().grade()).hasValue("No.2");
  }

  @Test
  void a_decimal_comma_is_asked_for_with_what_it_meant() {
    assertThatThrownBy(() -> read("4x4,10 ft,\"12,95\",,"))
        .hasMessageContaining("price: found '12,95'")
        .hasMessageContaining("Maybe 12.95?");
  }
}
