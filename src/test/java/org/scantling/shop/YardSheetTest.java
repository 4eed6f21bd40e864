package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Proposal;
import org.scantling.tables.FreshWeight;

/** The sheet in the yard says what must be asked for, and buys what the work takes. */
class YardSheetTest {
  private static Buying buying(Built built) {
    return new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying();
  }

  private static List<BuyingLine> lines(Built built, String section) {
    return buying(built).lines().stream().filter(each -> each.section().equals(section)).toList();
  }

  private static BuyingLine line(Built built, String item) {
    return buying(built).lines().stream()
        .filter(each -> each.item().contains(item))
        .findFirst()
        .orElseThrow();
  }

  private static WorkOrder order(Built built) {
    Pieces pieces = Pieces.of(built);
    Climbers climbers = new Planting(built).climbers();
    return new WorkOrderBuilder(built, pieces, climbers)
        .order(new StepWords(built, pieces, climbers, UnitSystem.IMPERIAL));
  }

  private static int place(WorkOrder order, String words) {
    List<WorkOrder.Step> steps = order.steps();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).text().contains(words)) {
        return i;
      }
    }
    throw new AssertionError("no step says " + words);
  }

  @Test
  void every_line_of_timber_says_species_grade_and_use_category() {
    assertThat(lines(Jobs.scenario("bean-row"), "timber"))
        .isNotEmpty()
        .allMatch(each -> each.kind().timber().equals("southern pine No.2"))
        .allMatch(
            each ->
                each.kind().treatment().equals(each.use().startsWith("posts") ? "UC4B" : "UC3B"));
  }

  /** Cedar in the ground is asked for as heartwood beside its size; its column is wrapped there. */
  @Test
  void no_line_of_timber_says_heartwood_twice() {
    Lists lists = Lists.of(Jobs.scenario("mower-lane"));
    String page =
        TextPage.print(
                ListPages.of(lists, ListKind.BUYING, UnitSystem.IMPERIAL),
                PrintOptions.plain(UnitSystem.IMPERIAL))
            .replaceAll("\\s+", " ");
    assertThat(page)
        .contains("11 6x6 x 12'-0\", heartwood, 10 sticks 1 stick posts, for use in the")
        .contains("western cedars No.2 ground (heartwood) 17 2x8 x 12'-0\"")
        .contains("cedars No.2, heartwood 7 2x8");
  }

  @Test
  void every_fixing_says_what_keeps_it_from_rust() {
    for (String name : List.of("mower-lane", "windy-hill", "stone-terrace")) {
      assertThat(lines(Jobs.scenario(name), "fixings"))
          .isNotEmpty()
          .allMatch(each -> each.kind().finish().contains("galvanized"));
    }
    assertThat(lines(Jobs.scenario("metric-country"), "fixings"))
        .allMatch(each -> each.kind().finish().contains("galvanized"));
  }

  /**
   * By hand: the pier is 1 ft 8 in wide, 2.182 sq ft; its concrete is 50 pcf heavier than the soil
   * and 3 ft 4 in deep, 166.7 psf. What is left of the pressure under it stands on the bracket.
   */
  @Test
  void a_bracket_is_rated_for_lift_side_push_and_weight_of_the_footing_checks() {
    Proposal proposal = Jobs.proposal("stone-terrace");
    Rating rating =
        line(Jobs.scenario("stone-terrace"), "post bracket").kind().rating().orElseThrow();
    assertThat(rating.liftLb()).isEqualTo(demand(proposal, "footing.uplift")).isPositive();
    assertThat(rating.sideLb()).isGreaterThanOrEqualTo(demand(proposal, "footing.sliding"));
    double areaSqFt = Math.PI / 4 * 20 / 12 * 20 / 12;
    double standsLb = (demand(proposal, "footing.bearing") - 50 * 40 / 12.0) * areaSqFt;
    assertThat(rating.downLb()).isCloseTo(standsLb, within(0.5));
    assertThat(line(Jobs.scenario("stone-terrace"), "post bracket").item())
        .contains("rated by its maker for", "lb of lift", "lb sideways and", "lb down");
  }

  private static double demand(Proposal proposal, String check) {
    return proposal.checks().stream()
        .filter(each -> each.id().equals(check))
        .map(Checked::check)
        .mapToDouble(each -> each.demand())
        .max()
        .orElseThrow();
  }

  /**
   * By hand, twelve posts in five bays of 34 in, rows 87 1/2 in apart: 24 braces; a block under
   * either board at each post, 24, and 8 from a stick; 12 + 12 + 24 stakes; three strings of 14 ft
   * 2 in and 6 ft, two of 7 ft 3 1/2 in and 6 ft.
   */
  @Test
  void braces_stakes_boards_blocks_and_string_are_bought() {
    Built built = Jobs.scenario("mower-lane");
    assertThat(line(built, "2x4 x 8'-0\", any grade").bought()).isEqualTo(20 + 3);
    // One a hole, three a corner and one a brace.
    assertThat(line(built, "stake").bought()).isEqualTo(10 + 12 + 20);
    assertThat(line(built, "board, ").bought()).isEqualTo(8);
    assertThat(line(built, "mason's line").needed().amount())
        .isEqualTo(Math.ceil((3 * (170 + 72) + 2 * (87.5 + 72)) / 12));
    assertThat(line(built, "preservative").bought()).isPositive();
  }

  @Test
  void each_run_of_wire_has_its_tensioner() {
    Built built = Jobs.scenario("mower-lane");
    int runs =
        new Planting(built).climbers().runs().stream().mapToInt(Climbers.WireRun::times).sum();
    assertThat(line(built, "tensioner").needed().amount()).isEqualTo(runs).isPositive();
  }

  @Test
  void sunk_heads_are_plugged_and_bare_tops_of_posts_capped() {
    Built lagged = Jobs.scenario("bean-row");
    assertThat(line(lagged, "plug").needed().amount())
        .isEqualTo(line(lagged, "lag screw").needed().amount());
    place(order(lagged), "Plug every sunk head");
    Built paired = Jobs.scenario("windy-hill");
    assertThat(line(paired, "cap for a post").bought()).isEqualTo(paired.geometry().postCount());
    place(order(paired), "or cap it");
  }

  @Test
  void the_permit_comes_first_and_the_inspector_before_anything_is_filled() {
    for (String name : List.of("mower-lane", "stone-terrace")) {
      WorkOrder order = order(Jobs.scenario(name));
      assertThat(place(order, "Get the permit")).isZero();
      int inspection = place(order, "the footing inspection");
      assertThat(order.steps().get(inspection).part()).isEqualTo("hold");
      String fill = name.equals("mower-lane") ? "Fill with gravel" : "Fill the holes with";
      assertThat(inspection).isBetween(place(order, "Dig the holes"), place(order, fill));
    }
  }

  /** The porch seats its headers 1/2 in deep; those of the court lie on their posts uncut. */
  @Test
  void headers_without_notches_are_laid_on_their_posts_and_not_notched() {
    List<WorkOrder.Step> porch = order(Jobs.scenario("bean-row")).steps();
    assertThat(porch).anyMatch(each -> each.text().startsWith("Notch the headers"));
    assertThat(porch).noneMatch(each -> each.text().startsWith("Lay the headers"));
    List<WorkOrder.Step> court = order(Jobs.scenario("heavy-snow")).steps();
    assertThat(court).anyMatch(each -> each.text().startsWith("Lay the headers"));
    assertThat(court).noneMatch(each -> each.text().contains("otch the headers"));
    assertThat(court).noneMatch(each -> each.text().contains("mark all notches across them"));
  }

  @Test
  void a_hole_deeper_than_an_arm_is_dug_from_above() {
    Built deep = Jobs.scenario("mower-lane");
    assertThat(new Holes(deep).deepestIn()).isGreaterThan(36);
    assertThat(order(deep).steps().get(place(order(deep), "dug from above")).part())
        .isEqualTo("safety");
    assertThat(line(deep, "power auger").bought()).isEqualTo(1);
  }

  /**
   * NDS Supplement 2018, 3.1.3 (from memory): density = 62.4 G / (1 + 0.009 G m) x (1 + m / 100);
   * of southern pine, G 0.55, swollen as at 30 percent and with 75 percent of water in it, 52.3
   * pcf.
   */
  @Test
  void freshly_treated_timber_weighs_what_its_water_adds() {
    double byHandPcf = 62.4 * 0.55 / (1 + 0.009 * 0.55 * 30) * 1.75;
    assertThat(FreshWeight.pcf(House.TABLES, 38.8)).isCloseTo(byHandPcf, within(0.2));
  }

  @Test
  void much_concrete_is_told_in_bulk_and_weighed_with_the_delivery() {
    Built built = Jobs.wish("everything-at-once", "preferences.footing=concrete");
    BuyingLine concrete = line(built, "concrete mix");
    double cuFt = concrete.needed().amount() + concrete.spare().amount();
    assertThat(cuFt).isGreaterThan(27);
    assertThat(concrete.use()).contains(Said.decimals(cuFt / 27, 1) + " cu yd in bulk");
    BuyingLine gravel = line(built, "gravel");
    Buying.Totals totals = buying(built).totals();
    assertThat(totals.deliveryLb() - totals.weightLb())
        .isCloseTo(80.0 * concrete.bought() + 50.0 * gravel.bought(), within(1e-6));
  }
}
