package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.print.PrintOptions;
import org.scantling.print.ReviewJson;
import org.scantling.print.ReviewText;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.tables.SizeRow;
import org.scantling.words.Words;

/**
 * Whatever somebody has built, a check answers: it never ends in a fault, and it never flatters.
 */
class CheckedDesignPropertyTest {
  private static final Engine ENGINE = new Engine(House.RULES, House.TABLES);
  private static final Words WORDS = Words.load(House.TABLES);
  private static final Tally TALLY = new Tally();
  private static final List<String> NONE = List.of();

  @Provide
  Arbitrary<Wish> wishes() {
    return RandomWish.any();
  }

  @Provide
  Arbitrary<BaseDesign> designs() {
    return Combinators.combine(posts(), headers(), crossbeams(), panels(), braces())
        .as(
            (posts, headers, crossbeams, panels, braces) ->
                new BaseDesign(
                    "Random design", Optional.empty(), posts, headers, crossbeams, panels, braces));
  }

  @Property(tries = 120, seed = "19861028", edgeCases = EdgeCasesMode.NONE)
  void a_check_always_answers_and_its_answer_is_what_it_lists(
      @ForAll("wishes") Wish wish, @ForAll("designs") BaseDesign design) {
    Site site = wish.over(House.roseGate());
    if (!ENGINE.validationErrors(design, site).isEmpty()) {
      TALLY.add("cannot be put together");
      return;
    }
    Review review = ENGINE.check(site, design, NONE, NONE);
    TALLY.add(review.refusal().isPresent() ? "refused" : review.passes() ? "passes" : "fails");
    honest(review);
    told(review);
  }

  private static void honest(Review review) {
    boolean limitsMet = review.limits().stream().noneMatch(each -> each.kind().fails());
    assertThat(review.passes())
        .isEqualTo(
            review.refusal().isEmpty()
                && review.failing().isEmpty()
                && limitsMet
                && review.unworked().isEmpty());
    assertThat(review.checks())
        .isSortedAccordingTo(Comparator.comparingDouble((Checked each) -> -each.check().ratio()));
    assertThat(review.failing())
        .containsExactlyElementsOf(
            review.checks().stream().filter(each -> !each.check().passes()).toList());
    for (Shortfall limit : review.limits()) {
      assertThat(limit.reason().source().citation()).isNotBlank();
      limit.ratio().ifPresent(ratio -> assertThat(ratio).isGreaterThan(1));
    }
    if (review.refusal().isEmpty() && review.unworked().isEmpty()) {
      assertThat(review.checks()).extracting(Checked::role).contains("post", "footing");
    }
  }

  private static void told(Review review) {
    for (UnitSystem units : UnitSystem.values()) {
      String text = ReviewText.of(review, WORDS, PrintOptions.plain(units));
      assertThat(text.lines()).allMatch(line -> line.length() <= 80);
      assertThat(text).doesNotContain("{", "}", "null", "NaN", "Infinity");
    }
    assertThat(ReviewJson.of(review, WORDS, Optional.empty()))
        .contains("\"schema\" : \"scantling/check/1\"");
  }

  @AfterContainer
  static void all_kinds_of_answers_were_seen() {
    TALLY.keep("checked-designs.txt");
    assertThat(TALLY.of("fails")).isGreaterThan(50);
    assertThat(TALLY.of("cannot be put together")).isLessThan(70);
  }

  private static Arbitrary<BaseDesign.Posts> posts() {
    Arbitrary<Foot> feet =
        Combinators.combine(
                Arbitraries.of("embedded", "concrete", "bracket"),
                Arbitraries.of("", "tamped-soil", "gravel", "concrete"),
                number(0, 96),
                Arbitraries.of(0, 12, 18, 24, 30))
            .as(Foot::new);
    return Combinators.combine(
            Arbitraries.of("4x4", "6x6", "8x8"),
            number(20, 200),
            number(12, 200),
            Arbitraries.integers().between(1, 12),
            number(36, 160),
            feet)
        .as(
            (size, rows, bay, bays, height, foot) ->
                new BaseDesign.Posts(
                    size,
                    rows,
                    bay,
                    bays,
                    height,
                    foot.depthIn(),
                    foot.kind(),
                    Optional.of(foot.fill()).filter(fill -> !fill.isEmpty()),
                    foot.holeIn() < 4 ? OptionalDouble.empty() : OptionalDouble.of(foot.holeIn())));
  }

  private record Foot(String kind, String fill, double depthIn, int holeIn) {}

  private static Arbitrary<BaseDesign.Headers> headers() {
    return Combinators.combine(
            Arbitraries.of("on-top", "paired"), sizes(), number(0, 60), number(0, 2))
        .as(BaseDesign.Headers::new);
  }

  private static Arbitrary<BaseDesign.Crossbeams> crossbeams() {
    return Combinators.combine(
            sizes(), Arbitraries.integers().between(2, 24), number(0, 60), number(0, 4))
        .as(
            (size, count, overhang, notch) ->
                new BaseDesign.Crossbeams(size, count, overhang, notch, Optional.empty()));
  }

  private static Arbitrary<Optional<BaseDesign.SidePanels>> panels() {
    return Combinators.combine(sizes(), number(2, 60), Arbitraries.integers().between(0, 12))
        .as(BaseDesign.SidePanels::new)
        .optional();
  }

  private static Arbitrary<Optional<BaseDesign.Braces>> braces() {
    return Combinators.combine(sizes(), number(4, 60)).as(BaseDesign.Braces::new).optional();
  }

  private static Arbitrary<String> sizes() {
    return Arbitraries.of(House.TABLES.sizes().rows().stream().map(SizeRow::id).toList());
  }

  /** Quarter inches. */
  private static Arbitrary<Double> number(int least, int most) {
    return Arbitraries.integers().between(4 * least, 4 * most).map(quarters -> quarters / 4.0);
  }
}
