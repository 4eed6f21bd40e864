package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.design.Structure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;

/** Whether one crossbeam lies at each row of posts on brackets, or two side by side. */
class AtPostsProposalTest {
  private static final String DOUBLED = "doubled-at-the-posts";
  private static final String[] WISTERIA = {
    "site.climate.wind-speed=95 mph",
    "planting=[{ vine: wisteria }]",
    "walkway.clear-width=8 ft",
    "walkway.length=12 ft"
  };

  private static Structure structure(Proposal proposal) {
    assertThat(proposal.result()).isInstanceOf(Proposal.Result.Proposed.class);
    return ((Proposal.Result.Proposed) proposal.result()).structure();
  }

  private static String word(Proposal proposal, Question question) {
    return ((Outcome.Word) proposal.decision(question).orElseThrow().proposed()).text();
  }

  private static String governing(Proposal proposal, Question question) {
    return proposal.decision(question).orElseThrow().governing().note().id();
  }

  private static void passes(Proposal proposal) {
    assertThat(proposal.checks())
        .isNotEmpty()
        .allSatisfy(
            each -> {
              double limit = BracketScenario.TABLES.check(each.id()).limitRatio();
              assertThat(each.check().passes(limit)).as(each.id()).isTrue();
            });
  }

  private static double ratio(Proposal proposal, String id) {
    return proposal.checks().stream()
        .filter(each -> each.id().equals(id))
        .map(Checked::check)
        .mapToDouble(check -> check.ratio())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void two_crossbeams_at_the_posts_come_before_bases_rated_for_moment() {
    Proposal proposal = BracketScenario.shown(DOUBLED);
    Structure walk = structure(proposal);
    assertThat(walk.footings().kind()).isEqualTo("bracket");
    assertThat(walk.geometry().crossbeams().doubled()).isTrue();
    assertThat(governing(proposal, Question.CROSSBEAMS_AT_POSTS))
        .isEqualTo("support.at-posts.single-fails");
    passes(proposal);
    Proposal single = BracketScenario.shown(DOUBLED, "preferences.crossbeams-at-posts=single");
    assertThat(structure(single).footings().kind()).isEqualTo("moment-base");
    assertThat(governing(single, Question.FOOTING_KIND)).isEqualTo("support.kind.braces-fail");
  }

  /** 13 places, of which 5 are over posts: 8 single ones, and 10 in pairs. */
  @Test
  void those_at_the_posts_are_members_of_two_plies_and_the_others_stay_single() {
    List<Structure.Member> crossbeams =
        structure(BracketScenario.shown(DOUBLED)).members().stream()
            .filter(each -> each.role().equals("crossbeam"))
            .toList();
    assertThat(crossbeams).extracting(Structure.Member::plies).containsExactly(1, 2);
    assertThat(crossbeams).extracting(Structure.Member::count).containsExactly(8, 10);
    assertThat(crossbeams.get(0).size()).isEqualTo(crossbeams.get(1).size());
    assertThat(crossbeams.get(0).notches()).isEqualTo(crossbeams.get(1).notches());
  }

  /** Single ones would all be 4x6, by the bolt of the brace. */
  @Test
  void two_thin_crossbeams_at_the_posts_come_before_thick_ones_all_over_where_they_take_less() {
    Proposal proposal = BracketScenario.plain(WISTERIA);
    assertThat(word(proposal, Question.CROSSBEAMS_AT_POSTS)).isEqualTo("doubled");
    assertThat(governing(proposal, Question.CROSSBEAMS_AT_POSTS))
        .isEqualTo("support.at-posts.less-timber");
    assertThat(word(proposal, Question.CROSSBEAM_SIZE)).startsWith("2x");
    passes(proposal);
  }

  @Test
  void a_size_deeper_is_no_reason_to_double_them() {
    Proposal proposal = BracketScenario.propose("stone-terrace");
    assertThat(word(proposal, Question.CROSSBEAM_SIZE)).isEqualTo("2x6");
    assertThat(word(proposal, Question.CROSSBEAMS_AT_POSTS)).isEqualTo("single");
  }

  @Test
  void asked_for_they_are_built_and_the_braces_work_them_about_half_as_hard() {
    Proposal one = BracketScenario.propose("stone-terrace");
    Proposal two =
        BracketScenario.propose("stone-terrace", "preferences.crossbeams-at-posts=doubled");
    assertThat(governing(two, Question.CROSSBEAMS_AT_POSTS)).isEqualTo("support.at-posts.asked");
    assertThat(word(two, Question.CROSSBEAM_SIZE)).startsWith("2x");
    assertThat(ratio(two, "crossbeam.brace-bending"))
        .isLessThan(ratio(one, "crossbeam.brace-bending"));
    passes(two);
  }

  /** Two 4x8 are 7 in broad: a 6x6, 5 1/2 in, leaves one of them hanging past its post. */
  @Test
  void posts_are_as_thick_as_both_crossbeams_over_them() {
    Structure walk = structure(BracketScenario.shown(DOUBLED));
    assertThat(walk.geometry().crossbeams().breadthAtPostsIn())
        .isEqualTo(7.0)
        .isLessThanOrEqualTo(walk.geometry().posts().breadthIn());
    Optional<String> stopped =
        BracketScenario.shown(DOUBLED)
            .decision(Question.POST_SIZE)
            .map(Decision::rejected)
            .flatMap(
                rejected ->
                    rejected.stream()
                        .filter(each -> option(each).equals("6x6"))
                        .map(each -> each.note().id())
                        .filter("posts.size.under-pair"::equals)
                        .findFirst());
    assertThat(stopped).isPresent();
  }

  private static String option(Reason rejection) {
    return ((Finding.Reject) rejection.finding()).option();
  }

  @Test
  void asked_for_where_posts_stand_in_the_ground_they_stay_single_and_it_is_told() {
    Proposal proposal = BracketScenario.shown("doubled-for-nothing");
    assertThat(structure(proposal).geometry().crossbeams().doubled()).isFalse();
    assertThat(proposal.decision(Question.CROSSBEAMS_AT_POSTS)).isEmpty();
    assertThat(proposal.cautions())
        .anySatisfy(
            each ->
                assertThat(each.finding().evidence().find("text").toString())
                    .contains("The site file asks for two crossbeams side by side"));
  }
}
