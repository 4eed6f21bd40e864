package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.scantling.engine.DemandedSite;
import org.scantling.engine.Scenarios;
import org.scantling.engine.TurningSearch;
import org.scantling.intake.Intake;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.TurningPoint;
import org.scantling.reasons.TurningPoints;
import org.scantling.words.Words;

/**
 * A run just below and a run just above every turning point give the two choices that are named.
 * Each run of the test takes some sites and some points of each; {@code -Dturning=all} takes all,
 * and {@code -Dseed=} others.
 */
class TurningPointsPropertyTest {
  private static final boolean ALL = "all".equals(System.getProperty("turning"));
  private static final int SITES = 3;
  private static final int POINTS = 25;

  private final Random random = new Random(Long.getLong("seed", 20140503));
  private int checked;

  @Test
  void on_both_sides_of_a_turning_point_stand_the_choices_that_are_named() {
    for (Intake site : some(new Scenarios().sites(), SITES)) {
      TurningPoints turning = search(site);
      for (Reach reach : some(turning.reaches(), turning.reaches().size())) {
        some(reach.points(), POINTS).forEach(point -> check(site, point));
        some(reach.ends(), POINTS).forEach(end -> check(site, reach, end, turning.today()));
        today(reach, turning.today());
      }
    }
    assertThat(checked).isGreaterThan(40);
  }

  private static TurningPoints search(Intake site) {
    return new TurningSearch(House.engine(), House.TABLES)
        .of(site.site(), site.defaulted(), Words.load(House.TABLES).choices().questions());
  }

  private void check(Intake site, TurningPoint point) {
    Question question = point.question();
    Choice below = Choice.of(at(site, point.demand().path(), point.at()), question);
    Choice above = Choice.of(at(site, point.demand().path(), point.beyond()), question);

    assertThat(below.same(point.here())).as("%s: %s", point, below).isTrue();
    assertThat(above.same(point.there())).as("%s: %s", point, above).isTrue();
    assertThat(below.same(above)).as("%s turns", point).isFalse();
    checked++;
  }

  private void check(Intake site, Reach reach, Reach.End end, Proposal today) {
    String path = reach.demand().path();

    assertThat(at(site, path, end.at()).proposed()).isEqualTo(today.proposed());
    assertThat(at(site, path, end.beyond()).proposed()).isNotEqualTo(today.proposed());
    checked++;
  }

  /** The choice up to a turning point is today's. */
  private static void today(Reach reach, Proposal today) {
    for (TurningPoint point : reach.points()) {
      assertThat(point.here().same(Choice.of(today, point.question()))).as("%s", point).isTrue();
    }
  }

  private static Proposal at(Intake site, String demand, Outcome value) {
    return House.propose(DemandedSite.with(site.site(), demand, value));
  }

  private <T> List<T> some(List<T> all, int most) {
    if (ALL) {
      return all;
    }
    List<T> shuffled = new ArrayList<>(all);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, Math.min(most, shuffled.size()));
  }
}
