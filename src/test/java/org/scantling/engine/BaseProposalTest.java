package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.design.Structure;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.JointRow;

/** Posts that a metal base over a pier holds upright. */
class BaseProposalTest {
  private static final String NO_BRACE = "no-brace-holds";
  private static final String ASKED = "bases-asked";

  private static Structure structure(Proposal proposal) {
    assertThat(proposal.result()).isInstanceOf(Proposal.Result.Proposed.class);
    return ((Proposal.Result.Proposed) proposal.result()).structure();
  }

  private static String word(Proposal proposal, Question question) {
    return ((Outcome.Word) proposal.decision(question).map(Decision::proposed).orElseThrow())
        .text();
  }

  private static Optional<Checked> check(Proposal proposal, String id) {
    return proposal.checks().stream().filter(each -> each.id().equals(id)).findFirst();
  }

  private static void passes(Proposal proposal) {
    assertThat(proposal.checks())
        .allSatisfy(
            each -> {
              double limit = BracketScenario.TABLES.check(each.id()).limitRatio();
              assertThat(each.check().passes(limit)).as(each.id()).isTrue();
            });
  }

  @Test
  void where_no_brace_holds_on_brackets_posts_stand_on_bases_rated_for_moment_and_it_is_told() {
    Proposal proposal = BracketScenario.shown(NO_BRACE);
    Structure walk = structure(proposal);
    assertThat(walk.footings().kind()).isEqualTo("moment-base");
    assertThat(walk.footings().backfill()).isEqualTo("concrete");
    assertThat(walk.braces()).isEmpty();
    assertThat(proposal.decision(Question.FOOTING_KIND).orElseThrow().governing().note().id())
        .isEqualTo("support.kind.braces-fail");
    assertThat(proposal.cautions())
        .anySatisfy(
            each ->
                assertThat(each.finding().evidence().find("text").toString())
                    .contains("Buy no post base without seeing its maker's sheet"));
    passes(proposal);
    assertThat(proposal.checks())
        .extracting(Checked::id)
        .contains(
            "joint.base",
            "joint.base-together",
            "joint.base-weight",
            "post.combined",
            "post.drift",
            "footing.embedment",
            "footing.bearing",
            "footing.uplift")
        .doesNotContain("footing.sliding", "brace.axial");
  }

  @Test
  void where_braces_hold_posts_stay_on_the_brackets_that_were_asked_for() {
    assertThat(word(BracketScenario.propose("stone-terrace"), Question.FOOTING_KIND))
        .isEqualTo("bracket");
  }

  @Test
  void bases_that_are_asked_for_do_without_the_braces_of_the_base_design() {
    Proposal proposal = BracketScenario.shown(ASKED);
    assertThat(structure(proposal).footings().kind()).isEqualTo("moment-base");
    assertThat(word(proposal, Question.BRACING)).isEqualTo("none");
    assertThat(structure(proposal).members())
        .extracting(Structure.Member::role)
        .doesNotContain("brace");
    passes(proposal);
  }

  /** The bolts of braces that will not be there are no reason for a thicker crossbeam. */
  @Test
  void braces_that_the_base_design_has_stop_no_timber_on_bases_in_a_storm() {
    String[] storm = {"site.climate.wind-speed=125 mph", "site.climate.exposure=C"};
    Proposal asked = BracketScenario.shown(ASKED, storm);
    assertThat(structure(asked).footings().kind()).isEqualTo("moment-base");
    passes(asked);
  }

  @Test
  void posts_on_bases_end_an_inch_above_the_ground_and_their_piers_are_of_whole_concrete() {
    Structure walk = structure(BracketScenario.shown(NO_BRACE));
    Structure.Member post =
        walk.members().stream()
            .filter(each -> each.role().equals("post"))
            .findFirst()
            .orElseThrow();
    assertThat(post.lengthIn()).isEqualTo(walk.geometry().posts().heightIn() - 1);
  }

  /** The wind's part of the moment over how hard the base is to turn, at the height of the head. */
  @Test
  void the_turning_of_the_base_counts_in_the_sway() {
    Proposal bases = BracketScenario.shown(NO_BRACE);
    int bays = structure(bases).geometry().plan().bays();
    Proposal buried =
        BracketScenario.shown(NO_BRACE, "preferences.footing=concrete", "walkway.bays=" + bays);
    assertThat(structure(buried).geometry().plan()).isEqualTo(structure(bases).geometry().plan());
    assertThat(structure(buried).footings().depthIn())
        .isEqualTo(structure(bases).footings().depthIn());
    double momentInLb = check(bases, "joint.base").orElseThrow().check().demand();
    double heightIn = structure(bases).geometry().posts().heightIn();
    double turningInLb =
        BracketScenario.TABLES.joints().row(word(bases, Question.BASE_JOINT)).turningInLb();
    double baseIn = check(bases, "post.drift").orElseThrow().check().demand();
    double buriedIn = check(buried, "post.drift").orElseThrow().check().demand();
    // Of the moment a tenth or so is that of the load which leans as far as it may.
    assertThat(baseIn - buriedIn).isGreaterThan(0.7 * momentInLb / turningInLb * heightIn);
  }

  @Test
  void past_the_strongest_base_that_is_asked_of_makers_it_is_a_case_for_an_engineer() {
    Proposal proposal =
        BracketScenario.shown(
            "brackets-asked",
            "preferences.footing=moment-base",
            "walkway.length=12 ft",
            "site.soil=bedrock",
            "site.climate.exposure=C",
            "site.climate.wind-speed=135 mph",
            "planting=[{ vine: wisteria }]",
            "walkway.headroom=9 ft");
    assertThat(proposal.result())
        .isInstanceOfSatisfying(
            Proposal.Result.NeedsEngineer.class,
            refused -> {
              assertThat(refused.broken()).contains(Question.BASE_JOINT);
              Finding.Reject closest = (Finding.Reject) refused.reason().finding();
              assertThat(closest.option()).isEqualTo("base-3000");
              assertThat(closest.ratio()).isGreaterThan(1);
            });
  }

  @Test
  void what_is_proposed_is_a_base_design_of_its_own_that_stands_the_same_way() {
    Proposal proposal = BracketScenario.shown(NO_BRACE);
    assertThat(ProposedDesign.of(proposal, BracketScenario.base(NO_BRACE)).posts().footing())
        .isEqualTo("moment-base");
  }

  @Test
  void every_rating_grows_from_row_to_row_so_that_the_first_that_holds_is_the_weakest() {
    List<JointRow> rows =
        BracketScenario.TABLES.joints().rows().stream()
            .filter(each -> each.question() == Question.BASE_JOINT)
            .toList();
    for (int i = 1; i < rows.size(); i++) {
      assertThat(rows.get(i).ratedMomentInLb()).isGreaterThan(rows.get(i - 1).ratedMomentInLb());
      assertThat(rows.get(i).turningInLb()).isGreaterThan(rows.get(i - 1).turningInLb());
    }
  }
}
