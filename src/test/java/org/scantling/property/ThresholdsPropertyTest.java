package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.answers.ResultCache;
import org.scantling.engine.Scenarios;
import org.scantling.intake.Intake;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Threshold;
import org.scantling.reasons.Thresholds;
import org.scantling.search.DemandedSite;
import org.scantling.search.ThresholdSearch;
import org.scantling.words.Words;

/**
 * A run just below and a run just above every threshold give the two choices that are named: all
 * points of one scenario, of every one where slow tests run, by an engine that remembers nothing.
 * Each value of a demand is run once, whatever number of choices turn there. {@code -Dturning=all}
 * takes the sites of the rule cases too.
 */
class ThresholdsPropertyTest {
  private static final boolean ALL = "all".equals(System.getProperty("turning"));

  @Test
  void on_both_sides_of_a_turning_point_stand_the_choices_that_are_named() {
    List<Integer> checked = checked(new Scenarios().demo().subList(0, 1));

    assertThat(checked).singleElement().satisfies(points -> assertThat(points).isGreaterThan(20));
  }

  @Test
  @Tag("slow")
  void on_both_sides_of_every_turning_point_stand_the_choices_that_are_named() {
    Scenarios scenarios = new Scenarios();
    List<Integer> checked = checked(ALL ? scenarios.sites() : scenarios.demo());

    assertThat(checked).hasSizeGreaterThan(12).allMatch(points -> points > 0);
    assertThat(checked.stream().mapToInt(Integer::intValue).sum()).isGreaterThan(500);
  }

  private static List<Integer> checked(List<Intake> sites) {
    return sites.parallelStream().map(site -> new Tried(site).check()).toList();
  }

  /** One site, with every value that was tried on it. */
  private static final class Tried {
    private final Intake site;
    private final Map<List<Object>, Proposal> run = new HashMap<>();
    private Proposal today;
    private int checked;

    Tried(Intake site) {
      this.site = site;
    }

    /** How many points there were to check. */
    int check() {
      Thresholds thresholds =
          new ThresholdSearch(House.engine(), House.TABLES)
              .of(site.site(), site.defaulted(), Words.load(House.TABLES).choices().questions());
      today = thresholds.today();
      for (Reach reach : thresholds.reaches()) {
        reach.points().forEach(this::check);
        reach.ends().forEach(end -> check(reach, end, thresholds.today()));
        today(reach, thresholds.today());
      }
      return checked;
    }

    private void check(Threshold point) {
      Question question = point.question();
      Choice below = Choice.of(at(point.demand().path(), point.at()), question);
      Choice above = Choice.of(at(point.demand().path(), point.beyond()), question);

      assertThat(below.same(point.here())).as("%s: %s", point, below).isTrue();
      assertThat(above.same(point.there())).as("%s: %s", point, above).isTrue();
      assertThat(below.same(above)).as("%s turns", point).isFalse();
      checked++;
    }

    private void check(Reach reach, Reach.End end, Proposal today) {
      String path = reach.demand().path();

      assertThat(at(path, end.at()).proposed()).isEqualTo(today.proposed());
      assertThat(at(path, end.beyond()).proposed()).isNotEqualTo(today.proposed());
      checked++;
    }

    /** The choice up to a threshold is today's. */
    private static void today(Reach reach, Proposal today) {
      for (Threshold point : reach.points()) {
        assertThat(point.here().same(Choice.of(today, point.question()))).as("%s", point).isTrue();
      }
    }

    /** Anew, with nothing that the search kept; its choices and why, which is all that is read. */
    private Proposal at(String demand, Outcome value) {
      return run.computeIfAbsent(
          List.of(demand, value),
          key ->
              House.engine()
                  .answer(
                      DemandedSite.with(site.site(), today, demand, value),
                      List.of(),
                      new ResultCache(ResultCache.Retention.ONE_RUN)));
    }
  }
}
