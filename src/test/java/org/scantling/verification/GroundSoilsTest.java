package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.ground.VerticalBearing;

/** Presumptive soils of IBC table 1806.2, put through the kernels that use them. */
class GroundSoilsTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/verification/ground-soils.csv",
      numLinesToSkip = 1,
      ignoreLeadingAndTrailingWhitespace = true)
  void a_foot_square_bears_the_tabulated_load_and_three_feet_of_depth_give_one_of_pressure(
      String id,
      String source,
      String edition,
      String section,
      String status,
      String soilClass,
      double bearingPsf,
      double lateralPsfPerFt,
      double frictionRatio,
      double cohesionPsf) {
    PresumptiveSoil soil =
        new PresumptiveSoil(bearingPsf, lateralPsfPerFt, frictionRatio, cohesionPsf);

    assertThat(VerticalBearing.of(bearingPsf, 144, soil.bearingPsf()).check().ratio())
        .as("%s, %s", id, soilClass)
        .isCloseTo(1, within(1e-12));
    assertThat(LateralResistance.tabulated(soil).pressurePsf(36, 1.0 / 3))
        .isCloseTo(lateralPsfPerFt, within(1e-9));
    assertThat(frictionRatio > 0)
        .as("friction or cohesion, not both")
        .isNotEqualTo(cohesionPsf > 0);
  }
}
