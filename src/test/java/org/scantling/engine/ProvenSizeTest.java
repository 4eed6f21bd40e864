package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** No proven size is given up without a reason that is true. */
class ProvenSizeTest {
  private static final Scenarios SCENARIOS = new Scenarios();

  @Test
  void a_size_that_its_role_seldom_takes_is_kept_while_it_serves() {
    Decision crossbeam =
        propose("Stout crossbeams").decision(Question.CROSSBEAM_SIZE).orElseThrow();

    assertThat(crossbeam.proposed()).isEqualTo(new Outcome.Word("4x4"));
    assertThat(crossbeam.reasons().get(0).note().id()).isEqualTo("crossbeams.size.kept");
  }

  @Test
  void posts_of_a_grade_without_published_strength_get_the_next_better_grade_that_has_one() {
    Proposal proposal = propose("Posts of a grade nobody tested");

    assertThat(proposal.decision(Question.POST_SIZE).orElseThrow().proposed())
        .isEqualTo(new Outcome.Word("6x6"));
    assertThat(proposal.decision(Question.POST_GRADE).orElseThrow().proposed())
        .isEqualTo(new Outcome.Word("No.2"));
    assertThat(proposal.decision(Question.GRADE).orElseThrow().proposed())
        .isEqualTo(new Outcome.Word("No.3"));
  }

  private static Proposal propose(String title) {
    return SCENARIOS.sites().stream()
        .filter(each -> each.site().title().equals(title))
        .map(each -> Scenarios.proposal(each))
        .findFirst()
        .orElseThrow();
  }
}
