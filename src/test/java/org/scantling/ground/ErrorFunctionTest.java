package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ErrorFunctionTest {
  /**
   * Values of the C library's erf and erfc; the first ten digits also in Abramowitz and Stegun
   * table 7.1.
   */
  @ParameterizedTest
  @CsvSource({
    "1e-06, 1.1283791670951364e-06, 0.9999988716208329",
    "0.01, 0.011283415555849616, 0.9887165844441503",
    "0.1, 0.1124629160182849, 0.8875370839817152",
    "0.5, 0.5204998778130465, 0.4795001221869535",
    "1, 0.8427007929497149, 0.15729920705028513",
    "1.5, 0.9661051464753108, 0.033894853524689274",
    "1.99, 0.995111413199617, 0.004888586800383003",
    "2, 0.9953222650189527, 0.004677734981047265",
    "2.5, 0.999593047982555, 0.0004069520174449589",
    "3, 0.9999779095030014, 2.2090496998585438e-05",
    "4, 0.9999999845827421, 1.541725790028002e-08",
    "5, 0.9999999999984626, 1.5374597944280351e-12",
    "10, 1.0, 2.088487583762545e-45"
  })
  void it_agrees_with_an_independent_implementation(double x, double erf, double erfc) {
    assertThat(ErrorFunction.erf(x)).isCloseTo(erf, withinPercentage(1e-11));
    assertThat(ErrorFunction.erfc(x)).isCloseTo(erfc, withinPercentage(1e-10));
  }

  @Test
  void the_two_ways_meet_at_two() {
    double below = Math.nextDown(2.0);
    assertThat(ErrorFunction.erfc(below)).isCloseTo(ErrorFunction.erfc(2), within(1e-15));
    assertThat(ErrorFunction.erf(below)).isCloseTo(ErrorFunction.erf(2), within(1e-15));
  }

  @Test
  void far_out_nothing_is_left() {
    assertThat(ErrorFunction.erf(0)).isZero();
    assertThat(ErrorFunction.erfc(0)).isCloseTo(1, within(0.0));
    assertThat(ErrorFunction.erfc(30)).isZero();
  }

  @Test
  void it_refuses_negative_arguments() {
    assertThatThrownBy(() -> ErrorFunction.erf(-0.1))
        .hasMessage("argument of erf -0.1 must be zero or more and finite");
    assertThatThrownBy(() -> ErrorFunction.erfc(-0.1))
        .hasMessage("argument of erfc -0.1 must be zero or more and finite");
  }
}
