package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.mechanics.Frame;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameMember;
import org.scantling.mechanics.FrameNode;
import org.scantling.mechanics.MemberStiffness;
import org.scantling.mechanics.Section;
import org.scantling.mechanics.Support;
import org.scantling.mechanics.Sway;

/** Source: exact beam-column solutions, e.g. Timoshenko and Gere, Theory of Elastic Stability. */
class MechanicsSwayTest {
  private static final double EI = 1.6e6 * Section.solid(5.5, 5.5).strongSecondMomentIn4();
  private static final double L = 108;
  private static final double H = 150;
  private static final double DRIFT_IN = H * L * L * L / (3 * EI);

  @Test
  void a_post_of_six_by_six_under_eight_thousand_pounds() {
    double p = 8000;
    double u = L * Math.sqrt(p / EI);
    double exactTip = H / (p * u / L) * (Math.tan(u) - u);
    assertThat(exactTip).isCloseTo(0.745014, within(5e-7)); // also by a boundary-value solver
    Sway sway = Sway.ofDrift(p, H, DRIFT_IN, L);
    assertThat(sway.criticalLb()).isCloseTo(25809.6, within(0.05)); // Euler, π²EI/4L²
    double tip = sway.amplifierFactor() * DRIFT_IN;
    assertThat(tip).isCloseTo(0.748133, within(5e-7)).isBetween(exactTip, 1.005 * exactTip);
    double moment = H * L + p * tip;
    double exactMoment = H * L * Math.tan(u) / u;
    assertThat(exactMoment).isCloseTo(22160.1, within(0.05));
    assertThat(moment).isBetween(exactMoment, 1.0015 * exactMoment);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.1, 0.2, 0.3, 0.4, 0.5})
  void the_amplifier_is_never_low_and_little_high_up_to_half_the_critical_load(double share) {
    double critical = Math.PI * Math.PI * EI / (4 * L * L);
    double p = share * critical;
    double u = Math.PI / 2 * Math.sqrt(share);
    double tipLoad = 3 * (Math.tan(u) - u) / (u * u * u);
    double amplifier = Sway.ofDrift(p, H, DRIFT_IN, L).amplifierFactor();
    assertThat(amplifier).isBetween(tipLoad, 1.01 * tipLoad);
    // Wind spread evenly over the height.
    double a = (1 - u * Math.sin(u)) / Math.cos(u);
    double evenLoad =
        8 / Math.pow(u, 4) * (a * (Math.cos(u) - 1) + u * (Math.sin(u) - u) + u * u / 2);
    assertThat(amplifier).isBetween(evenLoad, 1.025 * evenLoad);
  }

  @Test
  void the_effective_length_of_a_cantilever_gives_the_same_critical_load() {
    assertThat(Sway.ofCantilever(1, EI, 2 * L).criticalLb())
        .isCloseTo(Sway.ofDrift(1, H, DRIFT_IN, L).criticalLb(), within(1e-6));
    // NDS 2018, Appendix G: 2.1 recommended in place of 2.0.
    assertThat(Sway.ofCantilever(1, EI, 2.1 * L).criticalLb())
        .isCloseTo(25809.6 * 4 / 4.41, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void posts_between_a_stiff_header_sway_at_their_euler_load(boolean fixedFeet) {
    Support foot = fixedFeet ? Support.FIXED : Support.PINNED;
    MemberStiffness post = MemberStiffness.slender(1e12, EI);
    MemberStiffness stiff = MemberStiffness.slender(1e12, 1e5 * EI);
    Frame frame =
        new Frame(
            List.of(
                new FrameNode("A", 0, 0, foot),
                FrameNode.joint("B", 0, L),
                FrameNode.joint("C", 100, L),
                new FrameNode("D", 100, 0, foot)),
            List.of(
                FrameMember.rigid("left", "A", "B", post),
                FrameMember.rigid("header", "B", "C", stiff),
                FrameMember.rigid("right", "C", "D", post)));
    double drift = frame.solve(new FrameLoad.AtNode("B", H, 0, 0)).movement("C").xIn();
    double euler = 2 * Math.PI * Math.PI * EI / (L * L) / (fixedFeet ? 1 : 4);
    assertThat(Sway.ofDrift(0, H, drift, L).criticalLb()).isCloseTo(euler, within(1e-4 * euler));
  }

  @Test
  void on_a_turning_spring_it_is_cautious() {
    // Exact: u·tan(u) = k·L/EI, e.g. Timoshenko and Gere. Here k·L/EI = 1: u = 0.860334.
    double k = EI / L;
    double drift = DRIFT_IN + H * L * L / k;
    double exact = 0.860334 * 0.860334 * EI / (L * L);
    assertThat(0.860334 * Math.tan(0.860334)).isCloseTo(1, within(1e-5));
    assertThat(Sway.ofDrift(0, H, drift, L).criticalLb()).isBetween(0.8 * exact, exact);
  }
}
