package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeumannFactorTest {
  @Test
  void warm_ground_holds_the_frost_back() {
    assertThat(NeumannFactor.of(0.5, 0.2).lambdaFactor()).isCloseTo(0.864, within(0.0005));
  }

  @ParameterizedTest
  @CsvSource({"0, 0.02", "0, 50", "0.5, 0.2", "3, 1", "20, 0.001", "400, 3"})
  void the_root_satisfies_the_equation(double thermalRatio, double fusionFactor) {
    NeumannFactor found = NeumannFactor.of(thermalRatio, fusionFactor);
    double b = found.lambdaFactor() * Math.sqrt(fusionFactor / 2);
    double left = Math.sqrt(Math.PI) * b * Math.exp(b * b) / fusionFactor;
    double right = 1 / ErrorFunction.erf(b) - thermalRatio / ErrorFunction.erfc(b);
    assertThat(left).isCloseTo(right, within(1e-9 / ErrorFunction.erf(b)));
  }

  @Test
  void it_refuses_parameters_without_meaning() {
    assertThatThrownBy(() -> NeumannFactor.of(-1, 0.2))
        .hasMessage("thermal ratio -1.0 must be zero or more and finite");
    assertThatThrownBy(() -> NeumannFactor.of(1, 0))
        .hasMessage("fusion parameter 0.0 must be above zero and finite");
  }
}
