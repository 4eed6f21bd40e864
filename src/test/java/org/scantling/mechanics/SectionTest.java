package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SectionTest {
  @Test
  void a_two_by_eight_has_the_tabulated_properties() {
    // NDS Supplement 2018, Table 1B, 2 x 8.
    Section section = Section.solid(1.5, 7.25);
    assertThat(section.areaIn2()).isCloseTo(10.88, within(0.005 + 1e-9));
    assertThat(section.strongModulusIn3()).isCloseTo(13.14, within(0.005));
    assertThat(section.strongSecondMomentIn4()).isCloseTo(47.63, within(0.005));
    assertThat(section.weakModulusIn3()).isCloseTo(2.719, within(0.0005));
    assertThat(section.weakSecondMomentIn4()).isCloseTo(2.039, within(0.0005));
  }

  @Test
  void plies_add_up_and_bend_by_themselves_when_flatwise() {
    Section one = Section.solid(1.5, 9.25);
    Section two = new Section(1.5, 9.25, 2);
    assertThat(two.widthIn()).isEqualTo(3);
    assertThat(two.areaIn2()).isEqualTo(2 * one.areaIn2());
    assertThat(two.strongModulusIn3()).isEqualTo(2 * one.strongModulusIn3());
    assertThat(two.strongSecondMomentIn4()).isEqualTo(2 * one.strongSecondMomentIn4());
    assertThat(two.weakModulusIn3()).isEqualTo(2 * one.weakModulusIn3());
    assertThat(two.weakSecondMomentIn4()).isEqualTo(2 * one.weakSecondMomentIn4());
  }

  @Test
  void a_notch_leaves_a_shallower_section() {
    assertThat(new Section(1.5, 7.25, 2).notched(0.5)).isEqualTo(new Section(1.5, 6.75, 2));
    assertThatThrownBy(() -> Section.solid(1.5, 3.5).notched(3.5))
        .hasMessage("notch depth 3.5 in must leave wood of the 3.5 in section");
    assertThatThrownBy(() -> Section.solid(1.5, 3.5).notched(-0.1))
        .hasMessage("notch depth -0.1 in must leave wood of the 3.5 in section");
  }

  @Test
  void it_refuses_what_is_no_section() {
    assertThatThrownBy(() -> new Section(0, 3.5, 1))
        .hasMessage("section breadth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Section(1.5, Double.NaN, 1))
        .hasMessage("section depth NaN in must be above zero and finite");
    assertThatThrownBy(() -> new Section(1.5, 3.5, 0)).hasMessage("ply count 0 must be 1 or more");
  }
}
