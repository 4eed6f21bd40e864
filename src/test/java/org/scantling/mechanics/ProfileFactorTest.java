package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ProfileFactorTest {
  @Test
  void a_matrix_without_hold_is_refused_with_its_loose_movement() {
    // Two masses on one spring, nothing to the ground: both move alike.
    double[][] rows = {{5}, {-5, 5}};
    assertThatThrownBy(() -> new ProfileFactor(rows))
        .isInstanceOfSatisfying(
            ProfileFactor.SingularException.class,
            loose -> assertThat(loose.shape()).containsExactly(1, 1))
        .hasMessage("the stiffness matrix is singular");
  }
}
