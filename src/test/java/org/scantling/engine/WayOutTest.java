package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.property.House;
import org.scantling.property.SoundProposal;
import org.scantling.property.Wish;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** What is tried otherwise where the first answers lead nowhere, or to each other. */
class WayOutTest {

  /**
   * Two rows of 34 bays of 3'-6": the first number that serves. A smaller one is not built even
   * where it is asked for, down to half as many.
   */
  @Test
  void the_fewest_bays_that_serve_are_found_though_numbers_were_passed_over() {
    Wish hops =
        new Wish(
            1440,
            0,
            List.of(),
            0,
            new Wish.Climate(40, 42, 110, "B"),
            "sandy-gravel",
            "hops",
            new Wish.Timber("douglas-fir-larch", "No.2"),
            new Wish.Choices("auto", "auto", "code", "I", "full"));
    Site site = hops.over(House.base("hop-walk"));
    int fewest = bays(propose(site));
    assertThat(fewest).isGreaterThan(16);
    for (int fewer = fewest - 1; fewer > 16; fewer--) {
      assertThat(bays(propose(asking(fewer, site)))).isNotEqualTo(fewer);
    }
  }

  /** A search works one number after the other, since its cores are taken. */
  @Test
  void two_numbers_of_bays_side_by_side_come_to_what_one_after_the_other_does() {
    for (double lengthIn : new double[] {1440, 4041}) {
      Wish court =
          new Wish(
              lengthIn,
              210,
              List.of(new Site.User.Known("two-abreast")),
              0,
              new Wish.Climate(36, 25, 110, "B"),
              "sandy-gravel",
              "honeysuckle",
              new Wish.Timber("southern-pine", "No.2"),
              new Wish.Choices("bracket", "auto", "code", "I", "open"));
      Site site = court.over(House.base("kiwi-court"));
      ResultCache shared = new ResultCache(ResultCache.Retention.MANY_RUNS);
      Proposal run = propose(site);
      Proposal search = new Engine(House.RULES, House.TABLES).answer(site, List.of(), shared);

      assertThat(search.proposed()).isEqualTo(run.proposed());
      assertThat(search.decisions())
          .extracting(Decision::proposed)
          .isEqualTo(run.decisions().stream().map(Decision::proposed).toList());
    }
  }

  private static int bays(Proposal proposal) {
    Decision decision = proposal.decision(Question.BAYS).orElseThrow();
    return (int) Math.round(((Outcome.Amount) decision.proposed()).measure().amount());
  }

  private static Site asking(int bays, Site site) {
    Site.Walkway walk = site.walkway();
    return site.with(
        new Site.Walkway(
            walk.lengthIn(),
            walk.clearWidthIn(),
            walk.users(),
            walk.headroomIn(),
            OptionalInt.of(bays)));
  }

  /** Of boards that are cut over a 6x6, no bolt that holds keeps its distance to their ends. */
  @Test
  void a_larger_post_is_tried_where_no_bolt_finds_room_and_no_number_of_bays_helps() {
    Wish wish =
        new Wish(
            49,
            0,
            List.of(),
            0,
            new Wish.Climate(64, 57, 118, "B"),
            "clay",
            "honeysuckle",
            new Wish.Timber("southern-pine", "No.2"),
            new Wish.Choices("embedded", "paired", "code", "II", "full"));
    Proposal proposal = propose(wish.over(House.base("kiwi-court")));

    SoundProposal.check(wish, proposal);
    assertThat(word(proposal, Question.POST_SIZE)).isEqualTo("8x8");
    Finding governing =
        proposal.decision(Question.POST_SIZE).orElseThrow().reasons().get(0).finding();
    assertThat(governing).isInstanceOf(Finding.Reject.class);
    assertThat(((Finding.Reject) governing).option()).isEqualTo("6x6");
    assertThat(((Finding.Reject) governing).check()).isEqualTo("joint.geometry");
  }

  /**
   * A 2x8 crossbeam wants a 6x8 header under it and gives way to a 4x6, under which a 6x6 does: no
   * header is left that was made for a crossbeam which is gone.
   */
  @Test
  void a_header_is_not_left_deeper_for_a_crossbeam_that_is_gone() {
    Wish hops =
        new Wish(
            194,
            0,
            List.of(new Site.User.Known("wheelchair-companion"), new Site.User.Machine(25)),
            85.5,
            new Wish.Climate(47, 58, 114, "C"),
            "foliated-rock",
            "clematis",
            new Wish.Timber("douglas-fir-larch", "No.1"),
            new Wish.Choices("bracket", "on-top", "code", "II", "open"));
    Wish rose =
        new Wish(
            99,
            0,
            List.of(new Site.User.Machine(76), new Site.User.Machine(73)),
            0,
            new Wish.Climate(61, 34, 103, "B"),
            "sand",
            "jasmine",
            new Wish.Timber("redwood", "No.2"),
            new Wish.Choices("bracket", "on-top", "code", "II", "full"));

    leavesNoStaleHeader(hops, "hop-walk");
    leavesNoStaleHeader(rose, "rose-gate");
  }

  /** Braced however close the posts stand, since bases rated for moment would come first. */
  private static void leavesNoStaleHeader(Wish wish, String base) {
    Proposal proposal = without("layout.bays.braced", single(wish.over(House.base(base))));

    SoundProposal.check(wish, proposal);
    assertThat(word(proposal, Question.CROSSBEAM_SIZE)).isEqualTo("4x6");
    assertThat(word(proposal, Question.HEADER_SIZE)).isEqualTo("6x6");
  }

  /**
   * Where cost is to be kept down and the number that is asked for leads nowhere, what others led
   * to as whole structures is known already and told.
   */
  @Test
  void whole_structures_that_led_nowhere_are_told_where_cost_is_to_be_kept_down() {
    Wish grape =
        new Wish(
            1724,
            0,
            List.of(new Site.User.Known("pushchair")),
            0,
            new Wish.Climate(42, 25, 115, "B"),
            "clay",
            "grape",
            new Wish.Timber("southern-pine", "No.2"),
            new Wish.Choices("bracket", "auto", "code", "I", "open"));
    Site site = cheap(grape.over(House.base("rose-gate")));
    Proposal proposal = propose(asking(17, site));

    SoundProposal.check(grape, proposal);
    Decision bays = proposal.decision(Question.BAYS).orElseThrow();
    List<Integer> nowhere =
        bays.rejected().stream()
            .filter(each -> each.note().id().equals("layout.bays.dead-end"))
            .map(each -> (Finding.Reject) each.finding())
            .map(each -> Integer.parseInt(each.option()))
            .toList();
    int found = bays(proposal);
    assertThat(nowhere).hasSizeGreaterThan(2).allMatch(each -> each < found);
  }

  private static Site cheap(Site site) {
    Site.Preferences auto = site.preferences();
    return site.with(
        new Site.Preferences(
            auto.footing(),
            auto.header(),
            "cost",
            auto.basis(),
            auto.embedmentBasis(),
            auto.riskCategory(),
            auto.snowShare(),
            auto.crossbeamsAtPosts()));
  }

  /** With one crossbeam at each row of posts, however thick the braces make it. */
  private static Site single(Site site) {
    Site.Preferences auto = site.preferences();
    return site.with(
        new Site.Preferences(
            auto.footing(),
            auto.header(),
            auto.keep(),
            auto.basis(),
            auto.embedmentBasis(),
            auto.riskCategory(),
            auto.snowShare(),
            "single"));
  }

  private static Proposal propose(Site site) {
    return House.propose(site);
  }

  private static Proposal without(String rule, Site site) {
    return new Engine(House.RULES, House.TABLES, id -> !id.equals(rule)).propose(site, List.of());
  }

  private static String word(Proposal proposal, Question question) {
    Decision decision = proposal.decision(question).orElseThrow();
    return ((Outcome.Word) decision.proposed()).text();
  }
}
