package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Yard;

/**
 * A yard asks one price for timber treated for the ground and another for the rest.
 *
 * <p>By hand, the bean row: eight posts of 6x6, in the ground, and a stick to spare out of 14 ft;
 * ten crossbeams of 2x8, clear of it, and one to spare out of 10 ft; southern pine No.2.
 */
class YardKindsTest {
  private static final int POSTS = 9;
  private static final int BOARDS = 11;

  private static Yard.Offer offer(
      String size, int feet, long cents, String treatment, String species) {
    return new Yard.Offer(
        size,
        feet * 12,
        OptionalLong.of(cents),
        new Yard.Made(word(treatment), word(species), Optional.empty()));
  }

  private static Optional<String> word(String word) {
    return Optional.of(word).filter(each -> !each.isEmpty());
  }

  private static Built beanRow(Yard.Offer... offers) {
    return Jobs.scenario("bean-row", new Yard("yard.csv", Arrays.asList(offers)));
  }

  private static OptionalLong cost(Buying buying, String size) {
    return buying.timber().stream()
        .filter(each -> each.stock().size().equals(size))
        .findFirst()
        .orElseThrow()
        .result()
        .cents();
  }

  private static Buying buying(Yard.Offer... offers) {
    return Lists.of(beanRow(offers)).buying();
  }

  @Test
  void timber_for_the_ground_and_for_the_rest_are_bought_each_at_its_own_price() {
    Buying buying =
        buying(
            offer("6x6", 14, 3000, "UC3B", ""),
            offer("6x6", 14, 6000, "UC4B", ""),
            offer("2x8", 10, 2500, "UC4B", ""),
            offer("2x8", 10, 1100, "UC3B", ""));
    assertThat(cost(buying, "6x6")).hasValue(POSTS * 6000);
    assertThat(cost(buying, "2x8")).hasValue(BOARDS * 1100);
    assertThat(buying.lines())
        .filteredOn(each -> each.item().startsWith("6x6"))
        .allMatch(each -> each.cents().getAsLong() == POSTS * 6000);
  }

  @Test
  void a_line_that_says_no_treatment_serves_any_unless_another_names_it() {
    Buying buying =
        buying(
            offer("6x6", 14, 4000, "", ""),
            offer("2x8", 10, 1000, "", ""),
            offer("2x8", 10, 1200, "UC3B", ""));
    assertThat(cost(buying, "6x6")).hasValue(POSTS * 4000);
    assertThat(cost(buying, "2x8")).hasValue(BOARDS * 1200);
  }

  @Test
  void a_line_of_another_species_is_not_bought() {
    Buying buying =
        buying(
            offer("6x6", 14, 4000, "UC4B", "southern-pine"),
            offer("6x6", 14, 2000, "UC4B", "hem-fir"));
    assertThat(cost(buying, "6x6")).hasValue(POSTS * 4000);
  }

  /** Neither the worse for the ground nor the better for the rest: no price, and said so. */
  @Test
  void a_size_priced_for_another_treatment_alone_has_no_price_and_the_list_says_so() {
    Built built = beanRow(offer("6x6", 16, 3000, "UC3B", ""), offer("2x8", 10, 2500, "UC4B", ""));
    Lists lists = Lists.of(built);
    assertThat(cost(lists.buying(), "6x6")).isEmpty();
    assertThat(cost(lists.buying(), "2x8")).isEmpty();
    assertThat(lists.buying().totals().timberCents()).isEmpty();
    assertThat(
            TextPage.print(
                    ListPages.of(lists, ListKind.BUYING, UnitSystem.IMPERIAL),
                    PrintOptions.plain(UnitSystem.IMPERIAL))
                .replaceAll("\\s+", " "))
        .contains("6x6 x 14'-0\"")
        .contains(
            "The yard's list has the size but not the kind of 6x6 of southern pine No.2, UC4B; 2x8"
                + " of southern pine No.2, UC3B");
  }

  /** Cedar crossbeams over posts of pine: heartwood is asked for where the cedar is alone. */
  @Test
  void what_lasts_untreated_is_asked_for_by_the_species_of_the_piece_and_not_of_the_posts() {
    Built built = Jobs.wish("bean-row", "materials.crossbeams.species=western-cedars");
    assertThat(Lists.of(built).buying().lines())
        .filteredOn(each -> each.section().equals("timber"))
        .isNotEmpty()
        .allMatch(
            each ->
                each.kind()
                    .treatment()
                    .equals(
                        each.use().startsWith("posts")
                            ? "UC4B"
                            : each.use().equals("crossbeams") ? "heartwood" : "UC3B"));
  }
}
