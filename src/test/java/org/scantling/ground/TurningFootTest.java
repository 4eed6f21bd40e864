package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TurningFootTest {
  private static final int STRIPS = 2000;
  private static final TurningFoot FOOT = new TurningFoot(new LateralLoad(77.43, 48.63), 36, 24);

  @Test
  void a_foot_turns_as_worked_by_hand() {
    // z0 = 36 (108 + 194.52)/(144 + 291.78) = 24.991 in.
    assertThat(FOOT.turnsAtIn()).isCloseTo(24.991, within(0.001));
    // 77.43/[24 (24.991 · 36²/2 − 36³/3)] = 77.43/(24 · 642.2) = 0.005024.
    assertThat(FOOT.turnRatio()).isCloseTo(0.005024, within(2e-6));
    // 0.005024 · 24.991, and 0.005024 · (24.991 + 82).
    assertThat(FOOT.movementIn(0)).isCloseTo(0.1256, within(0.0002));
    assertThat(FOOT.movementIn(82)).isCloseTo(0.5375, within(0.0005));
  }

  @Test
  void a_push_at_the_ground_moves_it_by_eighteen_parts_of_push_over_stiffness() {
    // The closed form for h = 0: y0 = 18 P/(n_h d²), θ = 24 P/(n_h d³).
    TurningFoot foot = new TurningFoot(new LateralLoad(100, 0), 40, 20);
    assertThat(foot.movementIn(0)).isCloseTo(18 * 100 / (20.0 * 1600), within(1e-12));
    assertThat(foot.turnRatio()).isCloseTo(24 * 100 / (20.0 * 64000), within(1e-15));
  }

  @Test
  void a_turning_moment_alone_moves_it_by_twenty_four_parts() {
    // The closed form for a moment M alone: θ = 36 M/(n_h d⁴), y0 = 24 M/(n_h d³).
    TurningFoot foot = new TurningFoot(new LateralLoad(0.001, 1e7), 40, 20);
    assertThat(foot.turnRatio()).isCloseTo(36 * 1e4 / (20 * Math.pow(40, 4)), within(1e-6));
    assertThat(foot.movementIn(0)).isCloseTo(24 * 1e4 / (20 * Math.pow(40, 3)), within(1e-4));
  }

  /** The soil summed strip by strip, with no formula of the kernel's. */
  @Property
  void the_soil_that_it_presses_holds_push_and_moment_in_balance(
      @ForAll @DoubleRange(min = 1, max = 2000) double pushLb,
      @ForAll @DoubleRange(min = 0, max = 200) double heightIn,
      @ForAll @DoubleRange(min = 10, max = 120) double depthIn,
      @ForAll @DoubleRange(min = 2, max = 200) double stiffening) {
    TurningFoot foot = new TurningFoot(new LateralLoad(pushLb, heightIn), depthIn, stiffening);
    double groundIn = foot.movementIn(0);
    double leanIn = foot.movementIn(1) - groundIn;
    DoubleUnaryOperator pressed = z -> stiffening * z * (groundIn - leanIn * z);
    double heldLb = summed(pressed, depthIn);
    double aboutTheGroundLbIn = summed(z -> pressed.applyAsDouble(z) * z, depthIn);
    double scale = pushLb * (heightIn + depthIn) * 1e-5;
    assertThat(heldLb).isCloseTo(pushLb, within(scale));
    assertThat(aboutTheGroundLbIn).isCloseTo(-pushLb * heightIn, within(scale * depthIn));
  }

  private static double summed(DoubleUnaryOperator perInch, double depthIn) {
    double stripIn = depthIn / STRIPS;
    double sum = 0;
    for (int i = 0; i < STRIPS; i++) {
      sum += perInch.applyAsDouble((i + 0.5) * stripIn) * stripIn;
    }
    return sum;
  }

  @Test
  void the_depth_that_holds_it_still_enough_is_found() {
    assertThat(TurningFoot.depthIn(new LateralLoad(77.43, 48.63), 24, 0.5375, 82))
        .isCloseTo(36, within(0.02));
    assertThat(TurningFoot.depthIn(new LateralLoad(0, 48.63), 24, 0.5, 82)).isZero();
    assertThat(TurningFoot.depthIn(new LateralLoad(1e9, 48.63), 24, 0.5, 82)).isInfinite();
  }

  @Property
  void a_deeper_foot_moves_less(
      @ForAll @DoubleRange(min = 0, max = 200) double heightIn,
      @ForAll @DoubleRange(min = 10, max = 120) double depthIn) {
    LateralLoad push = new LateralLoad(100, heightIn);
    assertThat(new TurningFoot(push, depthIn + 1, 24).movementIn(90))
        .isLessThan(new TurningFoot(push, depthIn, 24).movementIn(90));
  }

  @Test
  void nothing_turns_without_soil() {
    assertThatThrownBy(() -> new TurningFoot(new LateralLoad(1, 1), 36, 0))
        .hasMessageContaining("growth of the soil's stiffness");
    assertThatThrownBy(() -> new TurningFoot(new LateralLoad(1, 1), 0, 24))
        .hasMessageContaining("embedment");
    assertThatThrownBy(() -> TurningFoot.depthIn(new LateralLoad(1, 1), 24, 0, 80))
        .hasMessageContaining("greatest movement");
  }
}
