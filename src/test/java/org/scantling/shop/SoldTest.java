package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposalText;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Yard;
import org.scantling.words.Words;

/** What is sold is what the yard's list says, in the structure, in the lists and in words. */
class SoldTest {
  private static Yard yard(double... lengthsIn) {
    return new Yard(
        "short list",
        DoubleStream.of(lengthsIn)
            .mapToObj(each -> new Yard.Offer("2x8", each, OptionalLong.empty()))
            .toList());
  }

  private static String told(Yard yard) {
    return ProposalText.of(
            Jobs.proposal("long-walk", yard),
            Words.load(House.TABLES).at(Optional.of(yard)),
            PrintOptions.plain(UnitSystem.IMPERIAL))
        .replaceAll("\\s+", " ");
  }

  private static List<Piece> headers(Yard yard) {
    return Pieces.of(Jobs.scenario("long-walk", yard)).of("header");
  }

  private static Buying buying(Yard yard) {
    Built built = Jobs.scenario("long-walk", yard);
    return new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying();
  }

  private static int specials(Yard yard) {
    return buying(yard).timber().stream().mapToInt(TimberPlan::specials).sum();
  }

  @Test
  void headers_are_cut_into_pieces_that_the_yard_sells() {
    Yard yard = yard(120, 144);
    assertThat(headers(yard)).isNotEmpty().allMatch(each -> each.shape().lengthIn() <= 144);
    assertThat(told(yard))
        .contains("This yard sells no 2x8 longer than 12'-0\": each header is in pieces over")
        .doesNotContain("The yard sells no 2x8");
    assertThat(specials(yard)).isZero();
  }

  /**
   * 60 ft of walk, a post and two tails of 14 in are 753 1/2 in: four boards, each in one piece.
   */
  @Test
  void a_yard_with_longer_timber_than_others_spares_the_joint() {
    Yard yard = yard(768);
    assertThat(headers(yard).stream().mapToInt(Piece::count).sum()).isEqualTo(4);
    assertThat(told(yard)).doesNotContain("yard sells no 2x8");
  }

  /** Bays of 90 in: a yard with nothing over 3 ft has no header of any kind. */
  @Test
  void headers_that_this_yard_does_not_sell_are_counted_as_special_orders() {
    Yard yard = yard(36);
    int pieces = headers(yard).stream().mapToInt(Piece::count).sum();
    assertThat(specials(yard)).isEqualTo(pieces).isPositive();
    assertThat(told(yard))
        .containsOnlyOnce("This yard sells no 2x8 longer than 3'-0\": the headers are a special");
    Buying buying = buying(yard);
    int sticks =
        buying.lines().stream()
            .filter(each -> each.section().equals("timber"))
            .mapToInt(BuyingLine::bought)
            .sum();
    assertThat(buying.totals().sticks()).isEqualTo(sticks);
  }
}
