package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.timber.Column.Bracing;

class ColumnTest {
  private static final double SAWN = 0.8;
  private static final AdjustedValues VALUES = Sample.column(1000, 474_452);

  @Test
  void the_stability_factor_shows_its_working() {
    ColumnStability stability = ColumnStability.of(96, 3.5, VALUES, SAWN);
    assertThat(stability.slendernessRatio()).isCloseTo(96 / 3.5, within(1e-12));
    assertThat(stability.criticalStressPsi()).isCloseTo(518.4, within(0.05));
    assertThat(stability.startStressPsi()).isEqualTo(1000);
    assertThat(stability.stabilityFactor()).isCloseTo(0.4464, within(0.00005));
    assertThat(stability.asFactor()).isEqualTo(new Factor("C_P", stability.stabilityFactor()));
  }

  @Test
  void the_more_slender_axis_governs() {
    Rectangle section = new Rectangle(3.5, 7.25);
    Column column = Column.of(10_000, section, new Bracing(96, 96, SAWN), VALUES);
    assertThat(column.governing()).isEqualTo(column.aboutBreadth());
    assertThat(column.allowable().psi()).isCloseTo(446.4, within(0.05));
    assertThat(column.check().ratio()).isCloseTo(10_000 / 25.375 / 446.4, within(1e-4));
    Column braced = Column.of(10_000, section, new Bracing(96, 24, SAWN), VALUES);
    assertThat(braced.governing()).isEqualTo(braced.aboutDepth());
    assertThat(braced.allowable().factors()).endsWith(braced.aboutDepth().asFactor());
  }

  @Test
  void a_post_held_all_along_keeps_its_whole_strength() {
    ColumnStability held = ColumnStability.of(0, 3.5, VALUES, SAWN);
    assertThat(held.stabilityFactor()).isEqualTo(1);
    assertThat(held.check().passes()).isTrue();
  }

  @Test
  void slenderness_of_fifty_passes_and_more_does_not() {
    assertThat(ColumnStability.of(175, 3.5, VALUES, SAWN).check().passes()).isTrue();
    assertThat(ColumnStability.of(175.01, 3.5, VALUES, SAWN).check().passes()).isFalse();
  }

  @Test
  void a_net_section_is_checked_without_length() {
    AxialStress stress = AxialStress.of(2000, 8.25, Sample.stress(575));
    assertThat(stress.stressPsi()).isCloseTo(242.4, within(0.05));
    assertThat(stress.check().ratio()).isCloseTo(242.4 / 575, within(1e-4));
  }

  @Test
  void columns_refuse_what_cannot_stand() {
    assertThatThrownBy(() -> ColumnStability.of(-1, 3.5, VALUES, SAWN))
        .hasMessage("effective length -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> ColumnStability.of(96, 0, VALUES, SAWN))
        .hasMessage("depth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> ColumnStability.of(96, 3.5, VALUES, 1.1))
        .hasMessage("straightness factor c 1.1 must be from 0.0 to 1.0");
    assertThatThrownBy(() -> new Bracing(96, 96, 0))
        .hasMessage("straightness factor c 0.0 must be above zero and finite");
    assertThatThrownBy(() -> new Bracing(-96, 96, SAWN))
        .hasMessage("buckling length along the depth -96.0 in must be zero or more and finite");
    assertThatThrownBy(() -> new Bracing(96, -96, SAWN))
        .hasMessage("buckling length along the breadth -96.0 in must be zero or more and finite");
    assertThatThrownBy(() -> Column.of(-1, Sample.FOUR_BY_FOUR, new Bracing(96, 96, SAWN), VALUES))
        .hasMessage("load on the post -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> AxialStress.of(-1, 1, Sample.stress(575)))
        .hasMessage("force along the grain -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> AxialStress.of(1, 0, Sample.stress(575)))
        .hasMessage("net area 0.0 in² must be above zero and finite");
  }
}
