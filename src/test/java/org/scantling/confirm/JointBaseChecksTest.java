package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Checked;

/**
 * The post of {@link PostChecksTest} on a base rated for 1200 lb-ft, which turns 1 in 200 at that:
 * 14 400 · 200 = 2.88e6 in·lb.
 *
 * <p>x tan x = 2.88e6 · 90/(459 000 · 12.505) = 45.158, so x = 1.53678 and K_e = 2.1 · (π/2)/x =
 * 2.1465: le/d = 193.18/3.5 = 55.195 and F_cE = 0.822 · 459 000/55.195² = 123.845 psi.
 */
class JointBaseChecksTest {
  private static final double TURNING_INLB = 14_400 * 200;

  private static Map<String, Checked> checks(double momentInLb) {
    PostChecks posts =
        new PostChecks(
                SmallArbour.headers(SmallArbour.geometry()),
                SmallArbour.FOUR_BY_FOUR,
                SmallArbour.standing(1),
                SmallArbour.LIMITS,
                SmallArbour.SOURCES)
            .onBase(TURNING_INLB);
    JointRules rules =
        new JointRules(JointChecksTest.FACTORS, SmallArbour.LIMITS, SmallArbour.SOURCES);
    return SmallArbour.byId(
        new JointBaseChecks(posts, SmallArbour.FOUR_BY_FOUR, rules)
            .of(new JointFix.Rated(2000, 900, 6000, momentInLb)));
  }

  @Test
  void the_base_holds_the_wind_and_the_load_that_leans() {
    // Wind 0.6 · 7053.6 = 4232.2 in·lb. Load 55.125 + 0.6 · 122.5 + 25.52 = 154.145 lb, 12.583 psi,
    // stands 3.5/6 = 0.5833 in off the middle and leans with the head, which may go 90/60 = 1.5 in.
    // 4232.2 + 154.145 · (0.58333 + 1.5).
    assertWorked(checks(14_400).get("joint.base"), "D+0.6W", 4553.3, 14_400);
  }

  @Test
  void moment_lift_and_side_push_add_up_where_the_wind_lifts() {
    // 0.6D+0.6W: 4232.2 + 25.52 · (0.58333 + 1.5) = 4285.4 in·lb; lift 47.775 lb (see
    // HeaderChecksTest), push 0.6 · 132.97 = 79.78 lb: 4285.4/14 400 + 47.775/2000 + 79.78/900.
    assertWorked(checks(14_400).get("joint.base-together"), "0.6D+0.6W", 0.41013, 1);
  }

  @Test
  void what_stands_on_it_is_held_against_its_rating_at_normal_duration() {
    // 55.125 + 327.31 + 25.52.
    assertWorked(checks(14_400).get("joint.base-weight"), "D+Lr", 407.96, 6000);
  }

  @Test
  void the_post_on_it_sways_farther_and_buckles_sooner_than_on_a_firm_foot() {
    // 0.59988 in bent and 4232.2/2.88e6 · 90 = 0.13226 in turned, grown by 1/(1 − 12.583/123.845).
    assertWorked(checks(14_400).get("post.drift"), "D+0.6W", 0.81494, 1.5);
    assertWorked(checks(14_400).get("post.slenderness"), "D", 55.195, 50);
  }

  @Test
  void a_base_that_is_rated_for_less_than_bends_it_over_fails() {
    assertThat(checks(4555).get("joint.base").check().passes(1)).isTrue();
    assertThat(checks(4552).get("joint.base").check().passes(1)).isFalse();
  }
}
