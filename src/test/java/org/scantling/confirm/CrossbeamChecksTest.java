package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.reasons.Checked;

/**
 * Span L = 68 in, tails t = 14 in, strip 10.5 in.
 *
 * <p>Line loads, lb/in: own 5.25 in² · 40/1728 = 0.12153; vines 2 · 10.5/144 = 0.14583; permanent D
 * = 0.26736; live 0.72917; snow 0.58333; wind down 0.72917.
 *
 * <p>An even load w everywhere: over the seat w t²/2 = 98 w, at mid-span w (L²/8 − t²/2) = 480 w.
 */
class CrossbeamChecksTest {
  private final Map<String, Checked> checks =
      SmallArbour.byId(
          new CrossbeamChecks(
                  SmallArbour.geometry(), SmallArbour.TOP, SmallArbour.LIMITS, SmallArbour.SOURCES)
              .of(SmallArbour.TWO_BY_FOUR));

  /*
   * C_L: l_u/d = 68/3.5 > 7, so le = 1.63 · 68 + 3 · 3.5 = 121.34 in; R_B² = 121.34 · 3.5/1.5² = 188.75;
   * F_bE = 1.2 · 510 000 · 0.9/188.75 = 2918.1 psi over Fb* = 1100 · 1.25 = 1375 psi: 2.1223;
   * C_L = 3.1223/1.9 − √(1.64331² − 2.1223/0.95) = 0.96032; Fb' = 1320.4 psi.
   */
  private static final double BENDING_PSI = 1320.44;

  @Test
  void a_person_in_mid_span_bends_it_most() {
    // 200 · 68/4 + 480 · 0.26736 = 3400 + 128.3 = 3528.3 in·lb over 1.5 · 3.5²/6 = 3.0625 in³.
    assertWorked(checks.get("crossbeam.bending"), "D+Lr", 1152.1, BENDING_PSI);
  }

  @Test
  void a_person_on_the_tip_of_a_tail_bends_what_the_notch_leaves() {
    // 200 · 14 + 98 · 0.26736 = 2826.2 in·lb over 1.5 · 3²/6 = 2.25 in³.
    assertWorked(checks.get("crossbeam.seat-bending"), "D+Lr", 1256.1, BENDING_PSI);
  }

  @Test
  void a_person_beside_the_seat_shears_it_most() {
    // 1.75 in inside: 200 · 66.25/68 = 194.85 lb, and D over half the span 0.26736 · 34 = 9.09 lb.
    // fv = 1.5 · 203.94/5.25; Fv' = 175 · 1.25 · 0.97.
    assertWorked(checks.get("crossbeam.shear"), "D+Lr", 58.27, 212.19);
    // At the notch V ≤ 2/3 · 212.19 · 1.5 · 3 · (3/3.5)² = 467.68 lb.
    assertWorked(checks.get("crossbeam.notched-shear"), "D+Lr", 203.94, 467.68);
  }

  @Test
  void the_seat_is_crushed_by_a_person_on_the_near_tip() {
    // 200 (1 + 14/68) + 48 · 0.26736 = 254.01 lb on 1.5 · 3.5 in².
    // Fc⊥' = 565 · 0.67 · C_b, C_b = (3.5 + 0.375)/3.5: the seat ends 14 − 1.75 in from the tip.
    assertWorked(checks.get("crossbeam.bearing"), "D+Lr", 48.383, 419.11);
  }

  @Test
  void sag_counts_creep_and_a_live_load_on_the_span_alone() {
    // EI = 1.4e6 · 0.9 · 1.5 · 3.5³/12 = 6.7528e6 lb·in².
    // Even load: 5 L⁴/384 − 98 L²/8 = 278 403 − 56 644 = 221 759 w; live leaves the tails: 278 403
    // w.
    // Permanent 0.26736 · 221 759/EI = 0.00878 in; 0.45 W + 0.75 Lr:
    // (0.45 · 0.72917 · 221 759 + 0.75 · 0.72917 · 278 403)/EI = 0.033322 in.
    String combination = "D+0.75(0.6W)+0.75Lr";
    assertWorked(checks.get("crossbeam.deflection-live"), combination, 0.033322, 68 / 240.0);
    assertWorked(checks.get("crossbeam.deflection-total"), combination, 0.050882, 68 / 180.0);
  }

  @Test
  void tails_are_lifted_by_a_span_that_sags() {
    // Slope at the seat under w everywhere: L³/24 − 98 L/2 = 9769.3 w, tip 14⁴/8 − 14 · 9769.3 =
    // −131 969 w; under w on the span alone −14 · 13 101.3 = −183 419 w.
    // (0.45 · 0.72917 · 131 969 + 0.75 · 0.72917 · 183 419)/EI = 0.021267 in; D 0.005225 in.
    // Twice the tail counts as span.
    String combination = "D+0.75(0.6W)+0.75Lr";
    assertWorked(checks.get("crossbeam.tail-deflection-live"), combination, 0.021267, 28 / 240.0);
    assertWorked(checks.get("crossbeam.tail-deflection-total"), combination, 0.031717, 28 / 180.0);
  }

  @Test
  void each_header_takes_half_a_crossbeam_and_a_person_on_the_tip_levers_more() {
    HeaderLoad each =
        CrossbeamOnHeader.of(SmallArbour.geometry(), SmallArbour.TWO_BY_FOUR, SmallArbour.TOP)
            .load();
    // Half the length is 48 in, half the strip 10.5 · 48/144 = 3.5 ft².
    assertThat(each.deadLb()).isCloseTo(5.8333, within(1e-3));
    assertThat(each.vinesLb()).isCloseTo(7, within(1e-9));
    assertThat(each.liveLb()).isCloseTo(35, within(1e-9));
    assertThat(each.snowLb()).isCloseTo(28, within(1e-9));
    assertThat(each.windDownLb()).isCloseTo(35, within(1e-9));
    assertThat(each.windUpLb()).isCloseTo(31.5, within(1e-9));
    assertThat(each.personLb()).isCloseTo(241.176, within(1e-3));
  }

  @Test
  void under_paired_headers_one_board_alone_is_the_seat() {
    Geometry paired = SmallArbour.geometry(1, new Geometry.Headers(true, 1.5, 5.5, 13.25, 0));
    Map<String, Checked> seated =
        SmallArbour.byId(
            new CrossbeamChecks(paired, SmallArbour.TOP, SmallArbour.LIMITS, SmallArbour.SOURCES)
                .of(SmallArbour.TWO_BY_FOUR));
    // Tail (3.5 + 2 · 1.5)/2 + 12.25 = 15.5 in, length 99 in:
    // 200 (1 + 15.5/68) + 49.5 · 0.26736 = 258.82 lb on 1.5 · 1.5 in²; C_b = 1.875/1.5.
    assertWorked(seated.get("crossbeam.bearing"), "D+Lr", 115.03, 473.19);
  }

  /** Wind of 0.5 lb/in on the face, strength level; C_fu 1.1 of a 2x4. */
  private final Map<String, Checked> blown =
      SmallArbour.byId(
          new CrossbeamChecks(
                  SmallArbour.geometry(), SmallArbour.TOP, SmallArbour.LIMITS, SmallArbour.SOURCES)
              .of(SmallArbour.TWO_BY_FOUR, new SideBlow(0.5, 1.1)));

  @Test
  void wind_on_its_face_bows_it_the_narrow_way_and_its_tails_most() {
    // 0.3 lb/in; I = 3.5 · 1.5³/12 = 0.98438 in⁴, E I = 1.24031e6. Over a seat it turns by
    // w (L³/24 − 98 L/2) = 9769.3 w, so a tip moves 14 · 9769.3 w − 14⁴ w/8 = 131 969 w, of 28/180.
    // Mid-span 5 w L⁴/384 − 98 w L²/8 = 221 759 w, 0.05364 of 0.3778 in: less of its limit.
    assertWorked(blown.get("crossbeam.lateral-sag"), "D+0.6W", 0.031920, 28 / 180.0);
  }

  @Test
  void it_is_bent_both_ways_at_once_by_wind_a_person_and_its_own_weight() {
    // Mid-span: 0.75 · 200 · 17 + 480 (0.26736 + 0.45 · 0.72917) = 2835.8 in·lb, 925.99 psi.
    // C_D 1.6: Fb* 1760, F_bE 2918.1, C_L 0.93874, Fb1' 1652.2. Sideways 0.225 · 480 = 108 in·lb
    // over 3.5 · 1.5²/6 = 1.3125 in³: 82.29 psi of 1760 · 1.1.
    // 0.56046 + 0.042503/(1 − (925.99/2918.1)²).
    assertWorked(blown.get("crossbeam.biaxial"), "D+0.75(0.6W)+0.75Lr", 0.60772, 1);
  }
}
