package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.timber.GroupAction.Row;

class FastenerPlacementTest {
  /** NDS 2018 Tables 12.5.1A to D, softwood, from memory. */
  private static final PlacementRule PULLED_END = new PlacementRule("end distance", 3.5, 7);

  private static final PlacementRule SPACING = new PlacementRule("spacing in a row", 3, 4);
  private static final PlacementRule NAIL_DEPTH = new PlacementRule("penetration", 6, 10);

  @Test
  void from_the_full_distance_on_the_whole_value_counts() {
    assertThat(PULLED_END.at(3.5, 0.5).factor()).isEqualTo(1);
    assertThat(PULLED_END.at(9, 0.5).factor()).isEqualTo(1);
    assertThat(PULLED_END.at(1.75, 0.5).factor()).isCloseTo(0.5, within(1e-12));
    assertThat(PULLED_END.at(0.7 * 3, 0.3).factor()).isEqualTo(1);
  }

  @Test
  void under_the_least_distance_the_fastener_may_not_stand() {
    assertThat(PULLED_END.at(1.75, 0.5).check().passes()).isTrue();
    assertThat(PULLED_END.at(1.74, 0.5).check().passes()).isFalse();
    assertThat(PULLED_END.at(1, 0.5).minimumIn()).isEqualTo(1.75);
    assertThat(PULLED_END.at(1, 0.5).fullIn()).isEqualTo(3.5);
  }

  @Test
  void a_nail_set_shallow_counts_in_part() {
    // NDS 2005 Table 11N (12N in 2018), footnote
    assertThat(NAIL_DEPTH.at(1.25, 0.162).factor()).isCloseTo(0.7716, within(0.00005));
    assertThat(NAIL_DEPTH.at(0.97, 0.162).check().passes()).isFalse();
  }

  @Test
  void the_smallest_share_of_the_group_counts() {
    Placement end = PULLED_END.at(2.5, 0.5);
    GeometryFactor geometry = new GeometryFactor(List.of(end, SPACING.at(2, 0.5)));
    assertThat(geometry.value()).isCloseTo(0.714, within(0.0005));
    assertThat(geometry.asFactor()).isEqualTo(new Factor("C_delta", geometry.value()));
    assertThat(geometry.allowed()).isTrue();
    Placement crowded = SPACING.at(1.4, 0.5);
    assertThat(new GeometryFactor(List.of(end, crowded)).tooClose()).containsExactly(crowded);
    assertThat(new GeometryFactor(List.of(end, crowded)).allowed()).isFalse();
  }

  @Test
  void placement_refuses_what_is_no_rule_and_no_distance() {
    assertThatThrownBy(() -> new PlacementRule("spacing", 4, 3))
        .hasMessage(
            "spacing for the full value, 3.0 diameters, must be above 0 and not under the least,"
                + " 4.0");
    assertThatThrownBy(() -> new PlacementRule("spacing", -1, 3))
        .hasMessage("least spacing -1.0 diameters must be zero or more and finite");
    assertThatThrownBy(() -> SPACING.at(0, 0.5))
        .hasMessage("spacing in a row 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> SPACING.at(2, 0))
        .hasMessage("fastener diameter 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new GeometryFactor(List.of()))
        .hasMessage("a geometry factor must look at one distance or more, found none");
  }

  @Test
  void a_single_bolt_has_nobody_to_share_with() {
    assertThat(GroupAction.of(Row.inWood(1, 2, 0.5), 2e7, 1.3e7).value())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void a_longer_row_shares_less_evenly() {
    double mainLb = 1.6e6 * 12.25;
    double sideLb = 1.6e6 * 8.25;
    GroupAction two = GroupAction.of(Row.inWood(2, 2, 0.5), mainLb, sideLb);
    assertThat(two.value()).isCloseTo(0.998, within(0.0005));
    assertThat(two.asFactor()).isEqualTo(new Factor("C_g", two.value()));
    assertThat(two.stiffnessRatio()).isCloseTo(8.25 / 12.25, within(1e-12));
    assertThat(two.u())
        .isCloseTo(1 + 180_000 * Math.pow(0.5, 1.5) * (1 / mainLb + 1 / sideLb), within(1e-12));
    assertThat(two.m()).isCloseTo(two.u() - Math.sqrt(two.u() * two.u() - 1), within(1e-12));
    double four = GroupAction.of(Row.inWood(4, 2, 0.5), mainLb, sideLb).value();
    assertThat(four).isCloseTo(0.983, within(0.0005));
    assertThat(GroupAction.of(Row.onSteel(4, 2, 0.5), mainLb, sideLb).value()).isLessThan(four);
    assertThat(Row.onSteel(4, 2, 0.5).slipLbPerIn())
        .isCloseTo(1.5 * Row.inWood(4, 2, 0.5).slipLbPerIn(), within(1e-6))
        .isCloseTo(270_000 * Math.pow(0.5, 1.5), within(1e-6));
    assertThat(GroupAction.of(Row.inWood(4, 2, 0.5), sideLb, mainLb).value())
        .isCloseTo(four, within(1e-12));
  }

  @Test
  void group_action_refuses_what_is_no_row() {
    assertThatThrownBy(() -> Row.inWood(0, 2, 0.5))
        .hasMessage("a row of 0 fasteners must have 1 or more");
    assertThatThrownBy(() -> Row.onSteel(2, 0, 0.5))
        .hasMessage("spacing in the row 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> Row.inWood(2, 2, 0))
        .hasMessage("fastener diameter 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Row(2, 2, 0.5, 0))
        .hasMessage("load over slip 0.0 lb/in must be above zero and finite");
    Row row = Row.inWood(2, 2, 0.5);
    assertThatThrownBy(() -> GroupAction.of(row, 0, 1))
        .hasMessage("stiffness E·A of the main piece 0.0 lb must be above zero and finite");
    assertThatThrownBy(() -> GroupAction.of(row, 1, 0))
        .hasMessage("stiffness E·A of the side piece 0.0 lb must be above zero and finite");
  }
}
