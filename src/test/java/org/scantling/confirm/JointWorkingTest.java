package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.FormulaLine;
import org.scantling.timber.Dowel;

/** What a joint tells of its working ends in what was checked. */
class JointWorkingTest {
  private static final JointFix LOOSE =
      new JointFix(
          JointFix.Way.TOE_SCREWED,
          2,
          new Dowel(0.19, 0.152, 80000),
          new JointFix.Reach(3, 2, 0),
          new JointFix.Rated(0, 0));

  private static final JointFix STEEL =
      new JointFix(
          JointFix.Way.RATED,
          2,
          Dowel.smooth(1, 1),
          new JointFix.Reach(0, 0, 0),
          new JointFix.Rated(1000, 500));

  private static final JointHold.Wood WOOD = new JointHold.Wood(0.5, 0.5, 3.5);

  private static List<FormulaLine> lines(List<JointLines> parts) {
    return parts.stream().flatMap(part -> part.lines().stream()).toList();
  }

  private static FormulaLine line(List<JointLines> parts, String id) {
    return lines(parts).stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }

  private static JointCase rail(JointFix fix, LoadCombination combination) {
    JointRailChecks.Rail rail =
        new JointRailChecks.Rail(
            BracedExample.timber(1.5, 3.5, 1), BracedExample.timber(3.5, 3.5, 1), 0);
    JointRailChecks.Loads loads = new JointRailChecks.Loads(300, 60, 200, 84);
    return new JointRailChecks(rail, loads, JointChecksTest.RULES)
        .cases(fix)
        .filter(each -> each.combination() == combination)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_rail_that_fasteners_carry_tells_weight_and_push_together() {
    JointCase screws = rail(LOOSE, LoadCombination.DEAD_WIND);
    JointCase steel = rail(STEEL, LoadCombination.DEAD_WIND);
    // 84 · 1.5 · 3.5 · 35/1728/2 + 60/2 = 34.47 lb, and 0.6 · 300/2 = 90 lb, of 1000 and of 500 lb.
    assertThat(line(steel.parts(), "weight").result().amount()).isCloseTo(34.466, within(1e-3));
    assertThat(line(steel.parts(), "push").result().amount()).isCloseTo(90, within(1e-9));
    assertThat(line(steel.parts(), "weight-rated").result().amount())
        .isEqualTo(steel.check().demand())
        .isCloseTo(34.466 + 180, within(1e-3));
    assertThat(line(screws.parts(), "weight-together").result().amount())
        .isEqualTo(screws.check().demand());
    assertThat(line(screws.parts(), "all-pushed").result().amount())
        .isEqualTo(screws.check().capacity());
  }

  private static Rolling rolling(Optional<RollHold> fasteners, JointHold hold) {
    JointForce force = new CrossbeamForce(LoadCombination.UPLIFT, 100, 10, 120).onJoint();
    return new Rolling(force, 2, 1.5, hold, fasteners, 2.75);
  }

  @Test
  void a_crossbeam_that_would_roll_tells_what_holds_it_whatever_that_is() {
    for (JointFix fix : List.of(LOOSE, STEEL)) {
      JointHold hold = JointHold.of(fix, JointChecksTest.RULES.factors(), WOOD, 1.6);
      Rolling held = rolling(Optional.of(RollHold.of(fix, hold, 1.5)), hold);
      String id = fix == STEEL ? "roll-held-rated" : "roll-held";
      assertThat(line(held.told(), id).result().amount()).isEqualTo(held.check().capacity());
      assertThat(line(held.told(), "roll-sum").result().amount()).isEqualTo(held.check().demand());
      Rolling blocked = rolling(Optional.empty(), hold);
      assertThat(line(blocked.told(), "block-held").result().amount())
          .isEqualTo(blocked.check().capacity())
          .isCloseTo(hold.pullLb() * 2.75, within(1e-9));
      assertThat(line(blocked.told(), "roll").result().amount())
          .isEqualTo(blocked.check().demand());
    }
  }

  @Test
  void what_a_hold_is_told_to_hold_is_what_it_holds() {
    JointHold hold = JointHold.of(LOOSE, JointChecksTest.RULES.factors(), WOOD, 1.6);
    List<JointLines> told = hold.toldBoth();
    assertThat(line(told, "all-pushed").result().amount()).isEqualTo(hold.sideLb());
    assertThat(line(told, "all-pulled").result().amount()).isEqualTo(hold.pullLb());
  }

  @Test
  void a_case_ends_in_how_far_it_is_used_up() {
    JointCase steel = rail(STEEL, LoadCombination.DEAD_WIND);
    List<FormulaLine> lines = lines(steel.parts());
    assertThat(lines.get(lines.size() - 1).result().amount()).isEqualTo(steel.check().ratio());
  }
}
