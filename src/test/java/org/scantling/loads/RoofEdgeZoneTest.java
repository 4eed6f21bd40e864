package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** ASCE 7-16 figure 30.8-1, flat, clear flow, as reprinted in the Bangladesh code, 6.2.19(a). */
class RoofEdgeZoneTest {
  private static final RoofEdgeZone.WidthRule WIDTH = new RoofEdgeZone.WidthRule(0.1, 0.4, 36);
  private static final RoofEdgeZone CLEAR =
      new RoofEdgeZone(
          36,
          List.of(
              new RoofEdgeZone.Band(1, 3.3, 1.7),
              new RoofEdgeZone.Band(4, 1.7, 1.7),
              new RoofEdgeZone.Band(Double.POSITIVE_INFINITY, 1.1, 1.1)));

  @Test
  void the_zone_is_a_tenth_of_the_width_but_not_under_three_feet() {
    assertThat(RoofEdgeZone.widthIn(96, 96, WIDTH)).isEqualTo(36);
    // 40 ft wide, 8 ft high: 4 ft against 3.2 ft.
    assertThat(RoofEdgeZone.widthIn(480, 96, WIDTH)).isCloseTo(38.4, within(1e-9));
  }

  @Test
  void a_small_part_is_lifted_hardest_at_the_corner() {
    assertThat(CLEAR.part(1296, 30).meanFactor()).isEqualTo(3.3);
    // 36 in of the corner and 9 of the edge.
    assertThat(CLEAR.part(1200, 45).meanFactor())
        .isCloseTo((3.3 * 36 + 1.7 * 9) / 45, within(1e-9));
  }

  @Test
  void a_larger_part_is_lifted_as_its_edge_and_a_large_one_as_the_whole() {
    assertThat(CLEAR.part(1297, 45).meanFactor()).isEqualTo(1.7);
    assertThat(CLEAR.part(4 * 1296, 45).meanFactor()).isEqualTo(1.7);
    assertThat(CLEAR.part(4 * 1296 + 1, 45).meanFactor()).isEqualTo(1.1);
  }
}
