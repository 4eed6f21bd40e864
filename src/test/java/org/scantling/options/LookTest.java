package org.scantling.options;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.property.House;
import org.scantling.property.Wish;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** How near a structure comes to the proportions of its base, worked by hand. */
class LookTest {
  private static final Proposal LIKE = House.propose(Wish.plain(), House.roseGate());
  private static final Look LOOK = new Look(House.TABLES, Optional.empty());

  private static Decision number(Question question, double base, double here) {
    return decision(
        question,
        new Outcome.Amount(Measure.inches(base)),
        new Outcome.Amount(Measure.inches(here)));
  }

  private static Decision word(Question question, String base, String here) {
    return decision(question, new Outcome.Word(base), new Outcome.Word(here));
  }

  private static Decision decision(Question question, Outcome base, Outcome here) {
    return new Decision(
        question,
        Optional.of(base),
        here,
        !base.equals(here),
        List.of(LIKE.decisions().get(0).governing()),
        List.of(),
        List.of());
  }

  private static double nearness(Decision... decisions) {
    return LOOK.nearness(
        new Proposal(
            "by hand",
            "by hand",
            LIKE.result(),
            List.of(decisions),
            List.of(),
            List.of(),
            List.of(),
            LIKE.checkLimits(),
            List.of(),
            List.of()));
  }

  @Test
  void a_structure_like_its_base_is_as_near_as_can_be() {
    assertThat(
            nearness(
                number(Question.BAY, 72, 72),
                number(Question.POST_HEIGHT, 96, 96),
                number(Question.ROW_SPACING, 60, 60),
                word(Question.POST_SIZE, "4x4", "4x4"),
                word(Question.HEADER_STYLE, "on-top", "on-top")))
        .isEqualTo(1);
  }

  @Test
  void all_of_it_twice_as_big_is_the_same_look() {
    assertThat(
            nearness(
                number(Question.BAY, 72, 144),
                number(Question.POST_HEIGHT, 96, 192),
                number(Question.ROW_SPACING, 60, 120)))
        .isEqualTo(1);
  }

  /** Bay to height 72/96 and 48/96, to width 72/60 and 48/60: two thirds each. */
  @Test
  void each_proportion_is_the_smaller_over_the_larger_and_the_mean_is_told() {
    assertThat(
            nearness(
                number(Question.BAY, 72, 48),
                number(Question.POST_HEIGHT, 96, 96),
                number(Question.ROW_SPACING, 60, 60),
                word(Question.HEADER_STYLE, "on-top", "paired")))
        .isCloseTo((2.0 / 3 + 2.0 / 3 + 0) / 3, within(1e-12));
  }

  /** A 4x4 is 3 1/2 in thick, a 6x6 5 1/2 in: as dressed, American Softwood Lumber Standard. */
  @Test
  void timbers_count_by_their_dressed_size() {
    assertThat(
            nearness(number(Question.POST_HEIGHT, 96, 96), word(Question.POST_SIZE, "4x4", "6x6")))
        .isCloseTo(3.5 / 5.5, within(1e-12));
  }
}
