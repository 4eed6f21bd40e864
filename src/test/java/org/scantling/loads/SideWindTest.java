package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.scantling.loads.SolidityBands.Band;

/** Ten square feet, G 0.85. */
class SideWindTest {
  private static final double GROSS_IN2 = 1440;
  private static final SolidityBands BANDS =
      new SolidityBands(List.of(new Band(0, 2.0), new Band(0.1, 1.8), new Band(0.3, 1.6)), 0.7);
  private static final LatticeRule LATTICE = new LatticeRule(BANDS, 0.85, 16);

  private static SideWind on(double solidityRatio, double pressurePsf, double wallFactor) {
    return SideWind.on(
        new WindPanel(solidityRatio * GROSS_IN2, GROSS_IN2),
        pressurePsf,
        LATTICE,
        new WallRule(wallFactor, 0.85, 16));
  }

  @Test
  void inside_a_band_a_side_takes_what_its_band_says() {
    // 20 · 0.85 · 1.8 · 2 sq ft.
    assertThat(on(0.2, 20, 1.4).forceLb()).isCloseTo(61.2, within(1e-9));
    assertThat(on(0.05, 20, 1.4).forceLb()).isCloseTo(17, within(1e-9));
    assertThat(on(0.2, 20, 1.4).wall()).isFalse();
  }

  @Test
  void just_past_the_start_of_a_band_it_takes_no_less_than_just_before() {
    // 0.1 solid at C_f 2.0: 34 lb; 1.05 sq ft at 1.8 would be 32.13 lb.
    assertThat(on(0.105, 20, 1.4).forceLb()).isCloseTo(34, within(1e-9));
    // 0.3 solid at 1.8: 91.8 lb; 3.2 sq ft at 1.6 would be 87.04 lb, 3.5 sq ft are 95.2 lb.
    assertThat(on(0.32, 20, 1.4).forceLb()).isCloseTo(91.8, within(1e-9));
    assertThat(on(0.35, 20, 1.4).forceLb()).isCloseTo(95.2, within(1e-9));
  }

  @Test
  void up_to_seven_tenths_it_is_an_open_frame_and_above_a_wall() {
    // 20 · 0.85 · 1.6 · 7 sq ft = 190.4 lb.
    SideWind open = on(0.7, 20, 1.4);
    assertThat(open.wall()).isFalse();
    assertThat(open.forceLb()).isCloseTo(190.4, within(1e-9));
    // 20 · 0.85 · 1.4 · (1 − 0.2999^1.5) · 10 sq ft = 198.91 lb.
    SideWind closed = on(0.7001, 20, 1.4);
    assertThat(closed.wall()).isTrue();
    assertThat(closed.forceLb()).isCloseTo(198.91, within(0.01));
    assertThat(on(1, 20, 1.4).forceLb()).isCloseTo(238, within(1e-9));
  }

  @Test
  void a_wall_with_a_low_coefficient_takes_no_less_than_the_most_solid_frame() {
    // C_f 1.3 gives 20 · 0.85 · 1.3 · 0.8357 · 10 = 184.7 lb, under the 190.4 lb of 0.7 solid.
    assertThat(on(0.7001, 20, 1.3).forceLb()).isCloseTo(190.4, within(1e-9));
    assertThat(on(1, 20, 1.3).forceLb()).isCloseTo(221, within(1e-9));
  }

  @Test
  void in_a_light_wind_the_least_pressure_counts_on_solid_area_or_on_the_whole_wall() {
    assertThat(on(0.5, 5, 1.4).forceLb()).isCloseTo(80, within(1e-9));
    assertThat(on(0.31, 5, 1.4).forceLb()).isCloseTo(49.6, within(1e-9));
    assertThat(on(0.8, 5, 1.4).forceLb()).isCloseTo(160, within(1e-9));
  }

  @Property
  void more_timber_never_takes_less_wind(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double solidityRatio,
      @ForAll @DoubleRange(min = 0, max = 0.3) double moreRatio,
      @ForAll @DoubleRange(min = 1, max = 60) double pressurePsf,
      @ForAll @DoubleRange(min = 1.3, max = 1.8) double wallFactor) {
    double more = Math.min(1, solidityRatio + moreRatio);
    assertThat(on(more, pressurePsf, wallFactor).forceLb())
        .isGreaterThanOrEqualTo(on(solidityRatio, pressurePsf, wallFactor).forceLb() * (1 - 1e-9));
  }
}
