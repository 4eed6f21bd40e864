package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HourlyWindTest {
  /** 0.36 kPa. */
  private static final double PSF = 0.36 / 0.047880259;

  @Test
  void a_pressure_is_the_speed_that_its_table_prints_beside_it() {
    // National Building Code of Canada 2020, Table C-1: 0.36 kPa, 23.6 m/s.
    assertThat(HourlyWind.ofPressure(PSF).speedMph() * 0.44704).isCloseTo(23.6, within(0.05));
    assertThat(HourlyWind.ofSpeed(HourlyWind.ofPressure(PSF).speedMph()).pressurePsf())
        .isCloseTo(PSF, within(1e-9));
  }

  @Test
  void equal_pressure_on_a_low_frame_asks_for_more_than_the_gusts_of_that_hour() {
    // 1.4 * 0.9 * 2.0 * 7.519 psf = 18.95 psf = 0.00256 * 0.85^3 V^2: V = 109.8 mph. The gusts:
    // 52.8 * 1.52 * sqrt(1.6) = 101.5 mph, 8 % less.
    HourlyWind wind = HourlyWind.ofPressure(PSF);
    HeightFactor kz = VelocityPressureTest.printed(0.85);
    HourlyWind.Frames frames = new HourlyWind.Frames(1.4, 0.9, 2.0, kz, 0.85, 0.85);
    assertThat(wind.equalGust(frames).speedMph()).isCloseTo(109.8, within(0.1));
    assertThat(wind.equalGust(frames).speedMph() / (wind.speedMph() * 1.52 * Math.sqrt(1.6)))
        .isBetween(1.08, 1.09);
    assertThat(StrengthGust.ofMean(wind.speedMph(), 1.52, 1.6).speedMph())
        .isCloseTo(101.5, within(0.2));
  }

  @Test
  void a_gust_of_an_older_map_is_brought_to_strength_level() {
    // 90 mph / sqrt(0.6).
    assertThat(StrengthGust.ofAllowable(90, 0.6).speedMph()).isCloseTo(116.2, within(0.05));
  }
}
