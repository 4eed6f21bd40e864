package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RequireTest {
  @Test
  void what_may_be_is_given_back() {
    assertThat(Require.positive("span", 4e-300, "in")).isEqualTo(4e-300);
    assertThat(Require.zeroOrMore("load", 0, "lb")).isZero();
    assertThat(Require.finite("moment", -7, "in·lb")).isEqualTo(-7);
    assertThat(Require.within("angle", 90, "degrees", 0, 90)).isEqualTo(90);
    assertThat(Require.within("angle", 15, "degrees", 15, 90)).isEqualTo(15);
    assertThat(Require.share("fill", 1)).isEqualTo(1);
    assertThat(Require.share("fill", 0)).isZero();
    assertThat(Require.below("notch", 1, "in", 3.5)).isEqualTo(1);
    assertThat(Require.atMost("collar", 3.5, "in", "hole", 3.5)).isEqualTo(3.5);
  }

  @Test
  void what_may_not_be_is_refused_with_its_unit() {
    assertThatThrownBy(() -> Require.positive("span", 0, "in"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("span 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> Require.positive("factor C_D", Double.POSITIVE_INFINITY, ""))
        .hasMessage("factor C_D Infinity must be above zero and finite");
    assertThatThrownBy(() -> Require.zeroOrMore("load", -1, "lb"))
        .hasMessage("load -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> Require.zeroOrMore("load", Double.POSITIVE_INFINITY, "lb"))
        .hasMessage("load Infinity lb must be zero or more and finite");
    assertThatThrownBy(() -> Require.finite("moment", Double.NaN, "in·lb"))
        .hasMessage("moment NaN in·lb must be finite");
    assertThatThrownBy(() -> Require.within("angle", 90.5, "degrees", 0, 90))
        .hasMessage("angle 90.5 degrees must be from 0.0 to 90.0");
    assertThatThrownBy(() -> Require.within("angle", -0.5, "degrees", 0, 90))
        .hasMessage("angle -0.5 degrees must be from 0.0 to 90.0");
    assertThatThrownBy(() -> Require.share("fill", 1.01))
        .hasMessage("fill 1.01 must be between 0 and 1");
    assertThatThrownBy(() -> Require.share("fill", -0.01))
        .hasMessage("fill -0.01 must be between 0 and 1");
    assertThatThrownBy(() -> Require.below("notch", 3.5, "in", 3.5))
        .hasMessage("notch 3.5 in must be below 3.5");
    assertThatThrownBy(() -> Require.atMost("collar", 14, "in", "hole", 12))
        .hasMessage("collar 14.0 in must be at most the hole, 12.0 in");
  }
}
