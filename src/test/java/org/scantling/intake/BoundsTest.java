package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class BoundsTest {
  @Test
  void every_number_of_both_files_has_bounds_and_no_bound_is_left_over() {
    SortedSet<String> numbers = new TreeSet<>();
    collect(SiteFile.class, "", numbers);
    collect(DesignFile.class, "", numbers);
    // A speed may be "as" a mean, which has a range of its own.
    assertThat(
            Bounds.ofTheProgram().ranges().keySet().stream().filter(path -> !path.contains(" as ")))
        .containsExactlyElementsOf(numbers);
    assertThat(numbers).hasSizeGreaterThan(25);
  }

  @Test
  void each_range_has_room() {
    assertThat(Bounds.ofTheProgram().ranges())
        .allSatisfy((path, range) -> assertThat(range.low()).as(path).isLessThan(range.high()));
  }

  @Test
  void both_ends_belong_to_the_range() {
    Bounds.Range range = Bounds.ofTheProgram().range("walkway.length");
    assertThat(range.holds(24)).isTrue();
    assertThat(range.holds(4800)).isTrue();
    assertThat(range.holds(23.9)).isFalse();
    assertThat(range.holds(4800.1)).isFalse();
    assertThat(range.holds(Double.NaN)).isFalse();
    assertThat(range.words("1 ft")).isEqualTo("from 2 ft to 400 ft");
    assertThat(range.words("1 cm")).isEqualTo("from 610 mm to 121.920 m");
  }

  @Test
  void places_in_lists_share_one_row() {
    assertThat(Bounds.ofTheProgram().range("walkway.users[12].machine-width").low()).isEqualTo(6);
  }

  @Test
  void a_field_without_a_row_is_a_fault_of_the_program() {
    assertThatThrownBy(() -> Bounds.ofTheProgram().range("walkway.colour"))
        .hasMessage("no row for walkway.colour in /org/scantling/schema/bounds.csv");
  }

  private static void collect(Class<?> shape, String path, SortedSet<String> numbers) {
    for (ShapeKeys.Key key : ShapeKeys.keys(shape)) {
      if (key.isGroup()) {
        collect(key.type(), path + key.key() + ".", numbers);
      } else if (key.entry().kind().isNumber()) {
        numbers.add(path + key.key());
        if (key.entry().kind() == EntryKind.BAYS) {
          numbers.add(path + key.key() + "[]");
        }
      }
    }
  }
}
