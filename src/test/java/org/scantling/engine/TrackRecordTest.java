package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.problem.OwnPlace;
import org.scantling.property.House;
import org.scantling.property.Wish;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.Severity;
import org.scantling.reasons.TrackRecord;

/**
 * What the record of a base is worth. The gate stands 30 in deep at its own place, where the
 * published rule asks for more.
 */
class TrackRecordTest {
  private static final Engine ENGINE = new Engine(House.RULES, House.TABLES);
  private static final String EMBEDMENT = "footing.embedment";

  /** A base that stands 30 in deep turns in the ground past the limit, at its own place. */
  private static final String SWAY = "post.drift";

  private static final List<String> NONE = List.of();

  @Test
  void the_record_is_the_check_of_the_base_at_its_own_place() {
    Site own =
        Wish.plain()
            .length(52)
            .climate(new Wish.Climate(30, 25, 105, "B"))
            .vine("climbing-rose")
            .over(base());
    Review review = ENGINE.check(own, base(), NONE, NONE);
    TrackRecord record = review.checkLimits().record().orElseThrow();
    assertThat(record.sinceYear()).isEqualTo(2007);
    assertThat(record.checks()).hasSameSizeAs(review.checks());
    for (Checked each : review.checks()) {
      assertThat(record.ratio(each.id())).as(each.id()).hasValue(each.check().ratio());
    }
    assertThat(record.ratio(EMBEDMENT).orElseThrow()).isBetween(1.1, 1.4);
    assertThat(record.ratio("no.such")).isEmpty();
  }

  @Test
  void the_published_limit_holds_where_nobody_asks_for_the_record() {
    Proposal proposal = ENGINE.propose(shallow(base()), NONE);
    assertThat(check(proposal, EMBEDMENT).check().ratio()).isLessThanOrEqualTo(1);
    assertThat(proposal.checkLimits().eased()).isEmpty();
    assertThat(proposal.checkLimits().baseRatio(check(proposal, EMBEDMENT)).orElseThrow())
        .isGreaterThan(1.1);
  }

  @Test
  void the_record_eases_depth_and_sway_as_far_as_it_goes_and_no_strength() {
    Proposal published = ENGINE.propose(shallow(base()), NONE);
    Proposal proven = ENGINE.propose(proven(shallow(base())), NONE);
    Checked sway = check(proven, SWAY);
    assertThat(sway.check().ratio())
        .isGreaterThan(1)
        .isLessThanOrEqualTo(proven.checkLimits().baseRatio(sway).orElseThrow());
    Checked depth = check(proven, EMBEDMENT);
    double record = proven.checkLimits().baseRatio(depth).orElseThrow();
    assertThat(depth.check().ratio()).isGreaterThan(1).isLessThanOrEqualTo(record);
    assertThat(depthIn(proven)).isLessThan(depthIn(published));
    assertThat(proven.checkLimits().eased().keySet()).isEqualTo(Set.of(EMBEDMENT, SWAY));
    for (Checked each : proven.checks()) {
      if (!each.id().equals(EMBEDMENT) && !each.id().equals(SWAY)) {
        assertThat(each.check().ratio()).as(each.id()).isLessThanOrEqualTo(1 + 1e-9);
      }
    }
  }

  @Test
  void what_passes_by_the_record_alone_is_a_grave_caution() {
    Proposal proven = ENGINE.propose(proven(shallow(base())), NONE);
    assertThat(cautions(proven)).contains("cautions.record");
    assertThat(proven.cautions())
        .filteredOn(each -> each.note().id().equals("cautions.record"))
        .hasSize(2)
        .allSatisfy(
            each ->
                assertThat(((Finding.Caution) each.finding()).severity()).isEqualTo(Severity.HIGH));
    assertThat(cautions(ENGINE.propose(shallow(base()), NONE))).doesNotContain("cautions.record");
  }

  @Test
  void frost_still_asks_for_its_depth() {
    Site deep = proven(Wish.plain().climate(new Wish.Climate(48, 25, 110, "B")).over(base()));
    assertThat(depthIn(ENGINE.propose(deep, NONE))).isGreaterThanOrEqualTo(48);
  }

  @Test
  void posts_that_are_set_otherwise_have_no_record() {
    Site concrete =
        proven(
            Wish.plain()
                .climate(new Wish.Climate(10, 25, 110, "B"))
                .choices(new Wish.Choices("concrete", "auto", "code", "I", "open"))
                .over(base()));
    Proposal proposal = ENGINE.propose(concrete, NONE);
    assertThat(proposal.checkLimits().eased()).isEmpty();
    assertThat(cautions(proposal)).contains("cautions.record-idle");
  }

  @Test
  void a_base_that_has_stood_nowhere_known_has_no_record() {
    BaseDesign unknown = with(base(), Optional.empty());
    assertThat(ENGINE.propose(shallow(unknown), NONE).checkLimits().record()).isEmpty();
    BaseDesign.Proven stood = base().proven().orElseThrow();
    BaseDesign windless =
        with(
            base(),
            Optional.of(
                new BaseDesign.Proven(
                    2010,
                    new Site.Climate(
                        OptionalDouble.of(48),
                        OptionalDouble.of(25),
                        OptionalDouble.empty(),
                        Optional.of("B"),
                        OptionalDouble.of(5),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                    stood.soil(),
                    stood.vine())));
    Proposal proposal = ENGINE.propose(proven(shallow(windless)), NONE);
    assertThat(proposal.checkLimits().record()).isEmpty();
    assertThat(cautions(proposal)).contains("cautions.record-idle");
  }

  @Test
  void a_base_is_held_against_its_own_timber_where_its_file_names_it() {
    BaseDesign cedar =
        new BaseDesign(
            base().title(),
            base().proven(),
            base().posts(),
            base().headers(),
            base().crossbeams(),
            base().sidePanels(),
            base().braces(),
            Optional.of(timber("western-cedars")));
    List<Double> ratios =
        Stream.of("southern-pine", "douglas-fir-larch")
            .map(species -> Wish.plain().over(cedar).with(timber(species)))
            .map(site -> recordOf(site).ratio("post.bending").orElseThrow())
            .toList();

    assertThat(ratios.get(0)).isEqualTo(ratios.get(1));
  }

  private static Site.Materials timber(String species) {
    return new Site.Materials(Optional.of(species), Optional.of("No.2"));
  }

  private static TrackRecord recordOf(Site site) {
    return ENGINE.propose(site, NONE).checkLimits().record().orElseThrow();
  }

  @Test
  void what_the_base_does_not_say_of_its_place_is_taken_as_here_and_told() {
    BaseDesign.Proven stood = base().proven().orElseThrow();
    BaseDesign quiet =
        with(
            base(),
            Optional.of(
                new BaseDesign.Proven(2010, stood.climate(), Optional.empty(), Optional.empty())));
    Proposal proposal = ENGINE.propose(proven(shallow(quiet)), NONE);
    assertThat(proposal.checkLimits().eased()).containsOnlyKeys(EMBEDMENT, SWAY);
    assertThat(
            proposal.cautions().stream()
                .filter(each -> each.note().id().equals("cautions.record-unsaid"))
                .map(each -> each.finding().evidence().rows().get(0).id()))
        .containsExactlyInAnyOrder("record-soil", "record-vine");
  }

  @Test
  void a_base_that_cannot_be_put_together_has_no_record() {
    BaseDesign base = base();
    BaseDesign odd =
        new BaseDesign(
            base.title(),
            base.proven(),
            base.posts(),
            new BaseDesign.Headers("on-top", "4x4", 13.25, 3.5),
            base.crossbeams(),
            base.sidePanels(),
            base.braces());
    assertThat(ENGINE.validationErrors(odd, shallow(base)))
        .extracting("field")
        .contains("headers.notch");
    assertThat(OwnPlace.of(shallow(odd))).isPresent();
    assertThat(ENGINE.propose(shallow(base), NONE).checkLimits().record()).isPresent();
  }

  @Test
  void a_base_stands_at_its_own_place_on_the_fall_that_its_file_gives() {
    assertThat(OwnPlace.of(shallow(base())).orElseThrow().ground().slopePercent()).isZero();
    Site.Ground own = OwnPlace.of(shallow(onFall(base(), 3))).orElseThrow().ground();
    assertThat(own.slopePercent()).isEqualTo(3);
    assertThat(own.soil()).isEqualTo(base().proven().orElseThrow().soil());
  }

  @Test
  void the_record_on_a_fall_is_the_check_of_the_base_on_that_fall() {
    for (double percent : new double[] {3, 12}) {
      BaseDesign sloped = onFall(base(), percent);
      Site own =
          Wish.plain()
              .length(52)
              .climate(new Wish.Climate(30, 25, 105, "B"))
              .vine("climbing-rose")
              .over(sloped);
      Site falling = own.with(new Site.Ground(own.ground().soil(), percent));
      Review review = ENGINE.check(falling, sloped, NONE, NONE);
      TrackRecord record = review.checkLimits().record().orElseThrow();
      assertThat(record.slopePercent()).isEqualTo(percent);
      assertThat(record.checks()).hasSameSizeAs(review.checks());
      for (Checked each : review.checks()) {
        assertThat(record.ratio(each.id())).as(each.id()).hasValue(each.check().ratio());
      }
    }
  }

  /**
   * The boards of the hop walk are cut over posts. Where they follow a fall they are cut plumb,
   * which leaves the bolt more wood; in level steps each bay has boards of its own, which bend as
   * single spans, more than boards over two bays with tails beside them.
   */
  @Test
  void a_walk_of_four_bays_is_worked_otherwise_on_a_fall() {
    TrackRecord level = recordOf(shallow(onFall(House.base("hop-walk"), 0)));
    TrackRecord follows = recordOf(shallow(onFall(House.base("hop-walk"), 2)));
    TrackRecord steps = recordOf(shallow(onFall(House.base("hop-walk"), 12)));
    assertThat(follows.slopePercent()).isEqualTo(2);
    assertThat(follows.ratio("joint.header-cut").orElseThrow())
        .isLessThan(level.ratio("joint.header-cut").orElseThrow());
    assertThat(follows.ratio("header.bending")).isEqualTo(level.ratio("header.bending"));
    assertThat(steps.ratio("header.bending").orElseThrow())
        .isGreaterThan(1.2 * level.ratio("header.bending").orElseThrow());
  }

  @Test
  void a_fall_steeper_than_where_the_base_stands_is_outside_its_record_and_told() {
    assertThat(cautions(ENGINE.propose(falling(base(), 0), NONE)))
        .contains("cautions.record")
        .doesNotContain("cautions.record-slope");
    assertThat(cautions(ENGINE.propose(falling(base(), 3), NONE)))
        .contains("cautions.record", "cautions.record-slope");
    assertThat(cautions(ENGINE.propose(falling(onFall(base(), 3), 3), NONE)))
        .contains("cautions.record")
        .doesNotContain("cautions.record-slope");
  }

  private static Site falling(BaseDesign base, double percent) {
    Site site = proven(shallow(base));
    return site.with(new Site.Ground(site.ground().soil(), percent));
  }

  private static BaseDesign onFall(BaseDesign base, double percent) {
    BaseDesign.Proven stood = base.proven().orElseThrow();
    return with(
        base,
        Optional.of(
            new BaseDesign.Proven(
                stood.builtYear(), stood.climate(), stood.soil(), stood.vine(), percent)));
  }

  /** Little frost, so that the wind decides the depth. */
  private static Site shallow(BaseDesign base) {
    return Wish.plain().length(162).climate(new Wish.Climate(10, 25, 110, "B")).over(base);
  }

  /**
   * The rose gate with a longer bay and shallower holes, and with sides so closed that the push on
   * them decides its depth, not the lift on its top.
   */
  private static BaseDesign base() {
    BaseDesign gate = House.roseGate();
    return new BaseDesign(
        gate.title(),
        gate.proven(),
        new BaseDesign.Posts(
            "4x4",
            62,
            52,
            1,
            82,
            30,
            "embedded",
            Optional.of("tamped-soil"),
            gate.posts().holeDiameterIn()),
        gate.headers(),
        gate.crossbeams(),
        Optional.of(new BaseDesign.SidePanels("4x4", 24, 6)),
        gate.braces());
  }

  private static BaseDesign with(BaseDesign base, Optional<BaseDesign.Proven> proven) {
    return new BaseDesign(
        base.title(),
        proven,
        base.posts(),
        base.headers(),
        base.crossbeams(),
        base.sidePanels(),
        base.braces());
  }

  private static Site proven(Site site) {
    Site.Preferences asked = site.preferences();
    return site.with(
        new Site.Preferences(
            asked.footing(),
            asked.header(),
            asked.keep(),
            "proven",
            asked.embedmentBasis(),
            asked.riskCategory(),
            asked.snowShare(),
            asked.crossbeamsAtPosts()));
  }

  private static Checked check(Proposal proposal, String id) {
    return proposal.checks().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static double depthIn(Proposal proposal) {
    Outcome depth = proposal.decision(Question.FOOTING_DEPTH).orElseThrow().proposed();
    return ((Outcome.Amount) depth).measure().amount();
  }

  private static List<String> cautions(Proposal proposal) {
    return proposal.cautions().stream().map(each -> each.note().id()).toList();
  }
}
