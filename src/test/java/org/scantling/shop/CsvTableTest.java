package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CsvTableTest {
  @Test
  void a_table_without_rows_is_its_heading() {
    assertThat(new CsvTable("mark", "count").text()).isEqualTo("mark,count\n");
  }

  @Test
  void columns_keep_their_order_and_what_is_not_set_stays_empty() {
    CsvTable table = new CsvTable("mark", "count", "note");
    table.row().set("note", "last").set("mark", "P1");
    table.row().set("count", 2);
    assertThat(table.text()).isEqualTo("mark,count,note\nP1,,last\n,2,\n");
  }

  @Test
  void a_cell_with_a_comma_a_quote_or_a_line_break_is_quoted() {
    CsvTable table = new CsvTable("a", "b", "c", "d");
    table.row().set("a", "1, 2").set("b", "5'-8 1/2\"").set("c", "up\ndown").set("d", "plain; one");
    assertThat(table.text())
        .isEqualTo("a,b,c,d\n\"1, 2\",\"5'-8 1/2\"\"\",\"up\ndown\",plain; one\n");
  }

  @Test
  void numbers_are_written_to_a_thousandth_without_idle_zeros() {
    CsvTable table = new CsvTable("a", "b", "c", "d");
    table.row().set("a", 12.0).set("b", 0.43751).set("c", -0.0001).set("d", 2.0005);
    assertThat(table.text()).isEqualTo("a,b,c,d\n12,0.438,0,2.001\n");
  }

  @Test
  void a_column_that_is_not_there_is_a_fault() {
    CsvTable.Row row = new CsvTable("mark").row();
    assertThatThrownBy(() -> row.set("marks", "P1")).hasMessage("no column is called marks");
  }
}
