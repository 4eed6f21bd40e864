package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.reasons.Checked;

/** Span 68 in, 0.25 lb/in dead besides its own 0.12153, 0.75 lb/in live, 2x4. */
class EvenBeamChecksTest {
  private static final EvenBeamChecks.Load LOAD = new EvenBeamChecks.Load(0.25, 0.75, 0);

  private static EvenBeamChecks.Beam beam(int spans, double notchIn, double seatIn) {
    return new EvenBeamChecks.Beam("crossbeam", 68, spans, notchIn, seatIn, 0);
  }

  private static Map<String, Checked> checks(EvenBeamChecks.Beam beam, EvenBeamChecks.Load load) {
    return SmallArbour.byId(even(beam, load).of(SmallArbour.TWO_BY_FOUR));
  }

  private static EvenBeamChecks even(EvenBeamChecks.Beam beam, EvenBeamChecks.Load load) {
    return new EvenBeamChecks(beam, load, SmallArbour.LIMITS, SmallArbour.SOURCES);
  }

  @Test
  void a_simple_span_bends_by_the_eighth() {
    // 1.12153 · 68²/8 = 648.2 in·lb over 3.0625 in³; held all along, Fb' = 1100 · 1.25.
    assertWorked(checks(beam(1, 0, 0), LOAD).get("crossbeam.bending"), "D+Lr", 211.67, 1375);
  }

  @Test
  void its_own_weight_counts_unless_the_stated_load_holds_it() {
    Map<String, Checked> without =
        SmallArbour.byId(even(beam(1, 0, 0), LOAD).of(SmallArbour.TWO_BY_FOUR.weightless()));
    // 1.0 · 68²/8 = 578 in·lb
    assertWorked(without.get("crossbeam.bending"), "D+Lr", 188.73, 1375);
  }

  @Test
  void live_load_alone_sags_by_the_textbook() {
    // 5 · 0.75 · 68⁴/(384 · 1.4e6 · 0.9 · 5.3594) = 0.030922 in; 68/240 in.
    assertWorked(
        checks(beam(1, 0, 0), LOAD).get("crossbeam.deflection-live"), "D+Lr", 0.030922, 0.28333);
  }

  @Test
  void shear_is_eased_by_one_depth_where_that_is_asked_for() {
    Map<String, Checked> full = checks(beam(1, 0, 0), LOAD);
    Map<String, Checked> eased =
        SmallArbour.byId(even(beam(1, 0, 0), LOAD).shearedOneDepthAway(SmallArbour.TWO_BY_FOUR));
    // 1.12153 · 34 = 38.132 lb, fv 10.895 psi; 3.5 in away 30.5/34 of it.
    assertWorked(full.get("crossbeam.shear"), "D+Lr", 10.895, 212.19);
    assertWorked(eased.get("crossbeam.shear"), "D+Lr", 9.7733, 212.19);
    full.remove("crossbeam.shear");
    eased.remove("crossbeam.shear");
    assertThat(eased).isEqualTo(full);
  }

  @Test
  void crushing_is_checked_only_where_a_length_of_bearing_is_stated() {
    assertThat(checks(beam(1, 0, 0), LOAD)).doesNotContainKey("crossbeam.bearing");
    // 38.132 lb on 1.5 · 3.5 in²; at the very end of the timber C_b = 1.
    assertWorked(
        checks(beam(1, 0, 3.5), LOAD).get("crossbeam.bearing"), "D+Lr", 7.2632, 565 * 0.67);
  }

  @Test
  void a_person_beside_the_support_shears_and_one_in_the_middle_bends() {
    Map<String, Checked> checks = checks(beam(1, 0, 0), new EvenBeamChecks.Load(0.25, 0.75, 200));
    // 200 · 68/4 + 0.37153 · 68²/8 = 3614.7 in·lb
    assertWorked(checks.get("crossbeam.bending"), "D+Lr", 1180.3, 1375);
    // 200 · 67/68 + 0.37153 · 34 = 209.69 lb
    assertWorked(checks.get("crossbeam.shear"), "D+Lr", 59.911, 212.19);
  }

  @Test
  void two_spans_bend_most_over_the_support_between_them() {
    // 1.12153 · 68²/8 over the middle support, in what the notch leaves: 2.25 in³.
    assertWorked(checks(beam(2, 0.5, 0), LOAD).get("crossbeam.seat-bending"), "D+Lr", 288.1, 1375);
  }

  @Test
  void it_is_worked_as_hard_as_a_crossbeam_of_the_walk_without_tails() {
    Geometry walk =
        new Geometry(
            new Geometry.Plan(68, 42, 1),
            new Geometry.Posts(3.5, 90),
            new Geometry.Headers(false, 3.5, 3.5, 0, 0.5),
            // Tails end at the middle of the headers, as far as a tail may be of no length.
            new Geometry.Crossbeams(4, 1.5, 3.5, 1e-9 - 1.75, 0.5, 1.5));
    TopLoads top = new TopLoads(2, 10, 0, 0, 0, 0);
    List<Checked> crossbeam =
        new CrossbeamChecks(walk, top, SmallArbour.LIMITS, SmallArbour.SOURCES)
            .of(SmallArbour.TWO_BY_FOUR);
    EvenBeamChecks.Beam alike = new EvenBeamChecks.Beam("crossbeam", 68, 1, 0.5, 3.5, 68);
    EvenBeamChecks.Load load =
        new EvenBeamChecks.Load(TopLoads.lbPerIn(2, 10.5), TopLoads.lbPerIn(10, 10.5), 0);

    Map<String, Checked> ours = SmallArbour.byId(even(alike, load).of(SmallArbour.TWO_BY_FOUR));
    assertThat(crossbeam).hasSizeGreaterThan(7);
    for (Checked each : crossbeam) {
      if (!each.id().contains("tail")) {
        assertThat(ours.get(each.id()).check().ratio())
            .as(each.id())
            .isCloseTo(each.check().ratio(), within(1e-6));
      }
    }
  }
}
