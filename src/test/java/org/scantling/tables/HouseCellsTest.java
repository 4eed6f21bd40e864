package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A house that changes one cell of a row is refused for what it wrote, and for nothing else. */
class HouseCellsTest {
  @TempDir private Path house;

  private Tables house(String file, String text) throws IOException {
    Files.writeString(house.resolve(file), text);
    return HouseTables.load(house);
  }

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

  /** The widths of such a row go on without end, which we write as 99. */
  @Test
  void a_house_may_change_the_strength_of_a_timber_of_any_width() throws IOException {
    Tables tables =
        house("design-values.csv", "id,bending_psi\ndouglas-fir-larch.no-2.dimension,850\n");

    assertThat(tables.designValues().row("douglas-fir-larch.no-2.dimension").bendingPsi())
        .isEqualTo(850);
  }

  /** Checks and lists put them two by two, so a third would be told and nowhere be counted. */
  @Test
  void three_bolts_through_a_pair_of_headers_are_refused() throws IOException {
    assertThatThrownBy(() -> house("joints.csv", "id,count\nheader-paired,3\n"))
        .isInstanceOf(TableException.class)
        .hasMessageContaining("joints.csv:2")
        .hasMessageContaining("2, one over the other, or 4 in two such rows");
    assertThat(house("joints.csv", "id,count\nheader-paired,4\n").joints().row("header-paired"))
        .extracting(JointRow::count)
        .isEqualTo(4);
  }

  /** Only amounts can be apart, and only what is asked in inches can be asked less by the inch. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "base-changes.csv | id,questions | sizes,post.girth | questions: found 'post.girth'",
        "base-changes.csv | id,questions | rhythm,header.style | questions: found 'header.style'",
        "look.csv | id,of | bay-to-height,post.size | of: found 'post.size'",
        "option-axes.csv | id,toward | preferences.header,less | accepted is words",
        "option-axes.csv | id,toward | base,words | accepted is each",
        "near-misses.csv | id,demand | less-width,site.climate.frost-depth | accepted is preferences",
        "near-misses.csv | id,value | in-concrete,tamped-soil | accepted is concrete",
        "near-misses.csv | id,gains | fewer-bays,money | accepted is size",
        "option-counts.csv | id,worth_share | timber,1.5 | worth_share: found '1.5'"
      })
  void a_row_that_names_what_it_cannot_count_is_refused(
      String file, String heading, String row, String refusal) {
    assertThatThrownBy(() -> house(file, heading + "\n" + row + "\n"))
        .isInstanceOf(TableException.class)
        .hasMessageContaining(file + ":2: ")
        .hasMessageContaining(refusal);
  }

  /** A rod thicker than an inch is no dowel to the standard (NDS 12.1.3), so nothing works it. */
  @Test
  void a_nail_thicker_than_the_standard_knows_is_refused() {
    assertThatThrownBy(() -> house("fasteners.csv", "id,diameter_in\nnail.common.16d,2\n"))
        .hasMessageContaining("fasteners.csv:2: diameter_in: found '2'")
        .hasMessageContaining("a number from 0.05 to 1");
  }

  @Test
  void a_housing_deeper_than_half_of_the_thinnest_post_is_refused() {
    assertThatThrownBy(() -> house("thumb.csv", "id,value\nrail.housing-depth,12.9\n"))
        .hasMessageContaining("thumb.csv:2: value: found '12.9'")
        .hasMessageContaining("a number from 0.05 to 1.7");
    assertThatThrownBy(() -> house("thumb.csv", "id,value\nrail.housing-share,2/3\n"))
        .hasMessageContaining("a number from 0.02 to 0.49");
  }

  /** By statics a part on one face has no lever against rolling away from it. */
  @Test
  void steel_on_one_face_of_a_crossbeam_is_refused() {
    assertThatThrownBy(() -> house("joints.csv", "id,count\ncrossbeam-angles,1\n"))
        .hasMessageContaining("joints.csv:2: count: found '1'")
        .hasMessageContaining("2 or more, one on each face of the crossbeam");
  }

  @Test
  void a_number_where_ours_has_none_and_nothing_would_read_it_is_refused() {
    assertThatThrownBy(() -> house("wind.csv", "id,from_ratio\nwind.gust,0.5\n"))
        .hasMessageContaining("wind.csv:2: from_ratio: found '0.5', accepted is nothing here");
    assertThatThrownBy(() -> house("wind.csv", "id,from_ratio\nwind.edge.clear.edge.small,0.5\n"))
        .hasMessageContaining("wind.csv:2: from_ratio: found '0.5', accepted is nothing here");
  }
}
