package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class AdjustedValuesTest {
  private static final PropertyFactors HOT = new PropertyFactors(0.7, 0.9, 0.71, 0.72, 0.73, 0.91);
  private static final Adjustments ALL =
      Adjustments.none()
          .lasting(1.15)
          .wet(new WetService(new PropertyFactors(0.85, 0.99, 0.97, 0.67, 0.8, 0.9), 0, 0))
          .heated(HOT)
          .sized(new SizeFactors(1.3, 1.2, 1.1))
          .laidFlat(1.05)
          .incised(Sample.INCISED)
          .repeated(1.16);

  @Test
  void each_value_takes_the_factors_of_its_column_and_no_others() {
    AdjustedValues values = AdjustedValues.of(Sample.FIR, ALL);
    assertThat(values.bending().factors())
        .containsExactly(
            new Factor("C_D", 1.15),
            new Factor("C_M", 0.85),
            new Factor("C_t", 0.7),
            new Factor("C_F", 1.3),
            new Factor("C_fu", 1.05),
            new Factor("C_i", 0.8),
            new Factor("C_r", 1.16));
    assertThat(values.tension().factors())
        .containsExactly(
            new Factor("C_D", 1.15),
            new Factor("C_M", 0.99),
            new Factor("C_t", 0.9),
            new Factor("C_F", 1.2),
            new Factor("C_i", 0.8));
    assertThat(values.shear().factors())
        .containsExactly(
            new Factor("C_D", 1.15),
            new Factor("C_M", 0.97),
            new Factor("C_t", 0.71),
            new Factor("C_i", 0.8));
    assertThat(values.compression().factors())
        .containsExactly(
            new Factor("C_D", 1.15),
            new Factor("C_M", 0.8),
            new Factor("C_t", 0.73),
            new Factor("C_F", 1.1),
            new Factor("C_i", 0.8));
  }

  @Test
  void load_duration_never_touches_bearing_nor_stiffness() {
    AdjustedValues values = AdjustedValues.of(Sample.FIR, ALL);
    assertThat(values.bearing().factors())
        .containsExactly(new Factor("C_M", 0.67), new Factor("C_t", 0.72), new Factor("C_i", 1));
    assertThat(values.elasticity().factors())
        .containsExactly(new Factor("C_M", 0.9), new Factor("C_t", 0.91), new Factor("C_i", 0.95));
    assertThat(values.elasticityMinimum().factors()).isEqualTo(values.elasticity().factors());
    assertThat(values.elasticityMinimum().referencePsi()).isEqualTo(580_000);
    assertThat(values.elasticity().referencePsi()).isEqualTo(1.6e6);
  }

  @Test
  void the_value_is_the_reference_times_its_factors() {
    Adjustments snow =
        Adjustments.none().lasting(1.15).sized(new SizeFactors(1.3, 1.3, 1.1)).repeated(1.15);
    assertThat(AdjustedValues.of(Sample.FIR, snow).bending().psi())
        .isCloseTo(900 * 1.15 * 1.3 * 1.15, within(1e-9))
        .isCloseTo(1547, within(0.5));
  }

  @Test
  void the_starred_bending_value_leaves_flat_use_out() {
    AdjustedValues flat = AdjustedValues.of(Sample.FIR, Adjustments.none().laidFlat(1.15));
    assertThat(flat.bending().psi()).isCloseTo(1035, within(1e-9));
    assertThat(flat.bendingStar().psi()).isCloseTo(900, within(1e-9));
  }

  @Test
  void with_nothing_to_adjust_the_reference_values_stand() {
    AdjustedValues plain = Sample.plain();
    assertThat(plain.bending().psi()).isEqualTo(900);
    assertThat(plain.tension().psi()).isEqualTo(575);
    assertThat(plain.shear().psi()).isEqualTo(180);
    assertThat(plain.bearing().psi()).isEqualTo(625);
    assertThat(plain.compression().psi()).isEqualTo(1350);
  }

  @Test
  void wet_service_takes_nothing_up_to_the_thresholds_and_steps_down_above_them() {
    assertThat(Sample.WET.bendingFactor(1150)).isEqualTo(1);
    assertThat(Sample.WET.bendingFactor(1000 * 1.15)).isEqualTo(1);
    assertThat(Sample.WET.bendingFactor(1150.01)).isEqualTo(0.85);
    assertThat(Sample.WET.compressionFactor(750)).isEqualTo(1);
    assertThat(Sample.WET.compressionFactor(750.01)).isEqualTo(0.8);
  }

  @Test
  void the_step_looks_at_the_value_times_its_size_factor() {
    Adjustments wet = Adjustments.none().wet(Sample.WET);
    AdjustedValues big = AdjustedValues.of(Sample.FIR, wet.sized(new SizeFactors(1.2, 1, 0.5)));
    assertThat(big.bending().psi()).isCloseTo(1080, within(1e-9));
    assertThat(big.compression().factors()).contains(new Factor("C_M", 1));
    AdjustedValues small = AdjustedValues.of(Sample.FIR, wet.sized(new SizeFactors(1.3, 1, 0.6)));
    assertThat(small.bending().psi()).isCloseTo(900 * 1.3 * 0.85, within(1e-9));
    assertThat(small.compression().factors()).contains(new Factor("C_M", 0.8));
  }

  @Test
  void a_threshold_of_zero_means_that_there_is_no_step() {
    WetService timber = new WetService(new PropertyFactors(1, 1, 1, 0.67, 0.91, 1), 0, 0);
    assertThat(timber.compressionFactor(400)).isEqualTo(0.91);
  }

  @Test
  void only_timbers_over_twelve_inches_deep_lose_by_size() {
    // NDS 2018 4.3.6.2
    assertThat(SizeFactors.ofTimber(13.5).bendingFactor()).isCloseTo(0.987, within(0.0005));
    assertThat(SizeFactors.ofTimber(12)).isEqualTo(SizeFactors.none());
    assertThat(SizeFactors.ofTimber(5.5)).isEqualTo(SizeFactors.none());
  }

  @Test
  void factors_can_be_added_and_left_out() {
    AdjustedStress bending = new AdjustedStress("Fb", 1000, List.of(new Factor("C_D", 1.6)));
    AdjustedStress stable = bending.with(new Factor("C_L", 0.9));
    assertThat(stable.psi()).isCloseTo(1440, within(1e-9));
    assertThat(stable.without("C_L")).isEqualTo(bending);
  }

  @Test
  void it_refuses_what_is_no_design_value() {
    assertThatThrownBy(() -> new DesignValues(0, 1, 1, 1, 1, 2, 1, 0.5))
        .hasMessage("Fb 0.0 psi must be above zero and finite");
    assertThatThrownBy(() -> new DesignValues(1, 1, 1, 1, 1, 2, 3, 0.5))
        .hasMessage("E_min 3.0 psi must not be above E 2.0 psi");
    assertThatThrownBy(() -> new DesignValues(1, 1, 1, 1, 1, 2, 1, 33))
        .hasMessage("specific gravity 33.0 must be below 1.5");
    assertThatThrownBy(() -> Adjustments.none().lasting(-1.6))
        .hasMessage("C_D -1.6 must be above zero and finite");
    assertThatThrownBy(() -> Adjustments.none().repeated(Double.NaN))
        .hasMessage("C_r NaN must be above zero and finite");
    assertThatThrownBy(() -> Adjustments.none().laidFlat(0))
        .hasMessage("C_fu 0.0 must be above zero and finite");
    assertThatThrownBy(() -> new PropertyFactors(1, 1, 1, 1, 1, 0))
        .hasMessage("factor on E 0.0 must be above zero and finite");
    assertThatThrownBy(() -> new SizeFactors(1, 1, -1))
        .hasMessage("C_F on Fc -1.0 must be above zero and finite");
    assertThatThrownBy(() -> new WetService(PropertyFactors.none(), -1, 0))
        .hasMessage("threshold of C_M on Fb -1.0 psi must be zero or more and finite");
    assertThatThrownBy(() -> new Factor(" ", 1))
        .hasMessage("a factor must have a symbol, such as C_D");
    assertThatThrownBy(() -> SizeFactors.ofTimber(0))
        .hasMessage("depth 0.0 in must be above zero and finite");
  }
}
