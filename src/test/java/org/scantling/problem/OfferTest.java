package org.scantling.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.scantling.reasons.Question.BRACE_SIZE;
import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;
import static org.scantling.reasons.Question.RAIL_SIZE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.answers.Stock;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.StockMatch;
import org.scantling.reasons.StyleMatch;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** Which sizes a question may be answered with, and what stands in for a proven size. */
class OfferTest {
  private static final Tables TABLES = Tables.load();

  @Test
  void a_proven_size_that_the_role_seldom_takes_is_on_offer_in_its_place() {
    assertThat(offer(Proven.option(CROSSBEAM_SIZE, "2x6")).sizes(CROSSBEAM_SIZE, false))
        .containsExactly("2x4", "2x6", "2x8", "2x10", "2x12", "4x6", "4x8", "4x10");
    assertThat(offer(Proven.option(CROSSBEAM_SIZE, "4x4")).sizes(CROSSBEAM_SIZE, false))
        .containsExactly("2x4", "2x6", "2x8", "4x4", "2x10", "2x12", "4x6", "4x8", "4x10");
  }

  @Test
  void a_proven_size_of_one_member_is_not_offered_for_another() {
    assertThat(offer(Proven.option(CROSSBEAM_SIZE, "4x6")).sizes(POST_SIZE, false))
        .containsExactly("4x4", "6x6", "8x8");
  }

  @Test
  void a_proven_size_that_is_not_sold_here_gives_way_to_the_smallest_no_smaller() {
    Offer offer = new Offer(new Stock(TABLES, "metric"), List.of(Proven.option(POST_SIZE, "4x4")));
    assertThat(offer.sizes(POST_SIZE, false)).doesNotContain("4x4");
    assertThat(offer.matches()).containsExactly(new StockMatch(POST_SIZE, "4x4", "95x95"));
  }

  @Test
  void where_all_that_is_sold_here_is_smaller_the_largest_stands_in() {
    Proven deep = Proven.option(CROSSBEAM_SIZE, "2x12");
    Offer offer = new Offer(new Stock(TABLES, "metric"), List.of(deep));
    assertThat(offer.matches()).containsExactly(new StockMatch(CROSSBEAM_SIZE, "2x12", "95x145"));
  }

  @Test
  void whatever_a_base_is_made_of_each_market_has_something_for_each_member() {
    for (Question question :
        List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE, RAIL_SIZE, BRACE_SIZE)) {
      for (SizeRow row : TABLES.sizes().rows()) {
        for (String market : List.of("north-america", "metric")) {
          Offer offer =
              new Offer(new Stock(TABLES, market), List.of(Proven.option(question, row.id())));
          assertThat(offer.sizes(question, false).contains(row.id()) || !offer.matches().isEmpty())
              .as("%s of %s in %s", question.id(), row.id(), market)
              .isTrue();
        }
      }
    }
  }

  @Test
  void in_the_other_style_a_header_starts_from_the_smallest_no_shallower() {
    assertThat(offer(Proven.option(HEADER_SIZE, "4x8")).matches())
        .containsExactly(new StyleMatch("paired", "4x8", "2-2x8"));
    assertThat(offer(Proven.option(HEADER_SIZE, "2-2x8")).matches())
        .containsExactly(new StyleMatch("on-top", "2-2x8", "4x8"));
  }

  @Test
  void a_proven_pair_is_no_timber_on_top() {
    Offer offer = offer(Proven.option(HEADER_SIZE, "2-2x4"));
    assertThat(offer.sizes(HEADER_SIZE, true)).startsWith("2-2x4", "2-2x6");
    assertThat(offer.sizes(HEADER_SIZE, false)).doesNotContain("2-2x4", "2x4");
  }

  private static Offer offer(Proven proven) {
    return new Offer(new Stock(TABLES, "north-america"), List.of(proven));
  }
}
