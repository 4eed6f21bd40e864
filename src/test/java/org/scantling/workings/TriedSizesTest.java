package org.scantling.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.TriedSize;

/** Sizes that a check stopped, worked for the engineer. */
class TriedSizesTest {
  private static Proposal proposal(String scenario) {
    return House.propose(
        new SiteReader(Vocabulary.of(House.TABLES))
            .read(Path.of("scenarios", scenario + ".yaml"), List.of())
            .site());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mower-lane", "windy-hill", "everything-at-once", "over-the-root"})
  void the_working_ends_in_the_numbers_by_which_the_size_was_stopped(String scenario) {
    Proposal proposal = proposal(scenario);

    assertThat(proposal.more().tried()).isNotEmpty();
    for (TriedSize each : proposal.more().tried()) {
      Finding.Reject reject = last(proposal, each);
      assertThat(reject.option()).isEqualTo(each.option());
      assertThat(reject.check()).isEqualTo(each.checked().id());
      assertThat(each.asStopped())
          .isEqualTo(
              same(amount(reject, "demand"), each.checked().check().demand())
                  && same(amount(reject, "capacity"), each.checked().check().capacity()));
      assertThat(each.checked().check().ratio()).isGreaterThan(1);
      List<Double> results = new ArrayList<>();
      each.steps().stream().map(CalculationStep::result).map(Measure::amount).forEach(results::add);
      assertThat(results)
          .as(each.checked().id() + " of " + each.option())
          .anyMatch(one -> same(one, each.checked().check().demand()));
      // The sum of an interaction is held against 1, a sway against a share of the height.
      if (each.checked().unit().equals(org.scantling.quantity.Unit.PSI)) {
        assertThat(results).anyMatch(one -> same(one, each.checked().check().capacity()));
      }
    }
  }

  @Test
  void most_are_worked_with_the_numbers_that_stopped_them() {
    assertThat(proposal("mower-lane").more().tried())
        .hasSizeGreaterThan(1)
        .allMatch(TriedSize::asStopped);
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) < 1e-6 * Math.abs(other);
  }

  private static double amount(Finding.Reject reject, String name) {
    return ((Evidence.Seen.Amount) reject.evidence().find(name).orElseThrow()).measure().amount();
  }

  private static Finding.Reject last(Proposal proposal, TriedSize tried) {
    Decision decision = proposal.decision(tried.question()).orElseThrow();
    return (Finding.Reject) decision.rejected().get(decision.rejected().size() - 1).finding();
  }

  /**
   * By hand, of the page: 5383 in-lb would be over a header in a 2x6 as well; cut by its notch it
   * is 1 1/2 by 4 3/4 in, so 6 x 5370/(1.5 x 4.75^2) = 952 psi, where 878 psi are allowed.
   */
  @Test
  void a_crossbeam_of_the_next_smaller_size_is_stopped_over_its_header() {
    TriedSize crossbeam =
        proposal("mower-lane").more().tried().stream()
            .filter(each -> each.checked().role().equals("crossbeam"))
            .findFirst()
            .orElseThrow();

    assertThat(crossbeam.option()).isEqualTo("2x6");
    assertThat(crossbeam.checked().check().demand()).isCloseTo(952, within(1.0));
    assertThat(crossbeam.checked().check().capacity()).isCloseTo(878, within(1.0));
  }
}
