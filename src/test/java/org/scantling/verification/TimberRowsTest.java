package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimberRowsTest {
  @ParameterizedTest
  @CsvSource({
    "timber-members.csv, 60",
    "timber-bolts.csv, 290",
    "timber-nails.csv, 50",
    "timber-withdrawal.csv, 130",
    "timber-spans.csv, 200"
  })
  void every_row_says_where_it_is_from_and_none_is_lost(String file, int least) {
    List<TimberRow> rows = TimberRow.read(file);
    assertThat(rows).hasSizeGreaterThanOrEqualTo(least);
    assertThat(rows).extracting(TimberRow::toString).doesNotHaveDuplicates();
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.text("source")).isNotBlank();
              assertThat(row.text("edition")).isNotBlank();
              assertThat(row.text("table")).isNotBlank();
              assertThat(row.text("reason")).isNotBlank();
              assertThat(row.text("status")).isIn("seen", "memory", "computed");
              assertThat(row.number("tolerance")).isPositive();
            });
  }
}
