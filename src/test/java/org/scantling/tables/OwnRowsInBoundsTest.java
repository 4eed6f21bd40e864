package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A house that changes one cell of a row is not to be refused for another, which is ours. */
class OwnRowsInBoundsTest {
  @Test
  void every_row_of_ours_keeps_the_bounds_that_a_house_is_held_to() {
    CellBounds bounds = new CellBounds();
    TableReader reader = new TableReader(HouseRules.none());
    List<String> refused = new ArrayList<>();
    for (TableFile file : TableFile.values()) {
      Collection<Row> rows = reader.rows(file);
      for (Row row : rows) {
        try {
          bounds.hold(file, row, rows);
        } catch (TableException out) {
          refused.add(out.getMessage());
        }
      }
    }

    assertThat(refused).isEmpty();
  }
}
