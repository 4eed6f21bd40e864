package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.PackRow;

/** A yard that thinks in millimetres sells boxes of kilograms and coils of metres. */
class MetricYardTest {
  private static Buying buying(String scenario) {
    Built built = Jobs.scenario(scenario);
    return new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying();
  }

  private static List<String> packs(Buying buying) {
    return buying.lines().stream().map(BuyingLine::unit).toList();
  }

  @Test
  void packs_are_metric_where_the_timber_is() {
    assertThat(packs(buying("metric-country")))
        .contains("25 m coil", "75 m roll", "1 L can")
        .noneMatch(pack -> pack.contains(" lb") || pack.contains(" ft"));
    assertThat(packs(buying("mower-lane"))).contains("1 qt can", "100 ft coil");
    PackRow nails = House.TABLES.packs().row("nail.common.16d");
    assertThat(List.of(nails.words(), nails.metricWords()))
        .containsExactly("5 lb box", "2.5 kg box");
  }

  @Test
  void concrete_comes_in_bags_of_kilograms() {
    Built built = Jobs.wish("metric-country", "preferences.footing=concrete");
    assertThat(
            new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying().lines())
        .anyMatch(line -> line.unit().equals("25 kg bag"))
        .noneMatch(line -> line.unit().contains("lb"));
  }

  @Test
  void every_inch_size_is_told_with_its_millimetres() {
    assertThat(buying("metric-country").lines())
        .filteredOn(line -> line.section().equals("fixings"))
        .isNotEmpty()
        .allMatch(line -> line.item().matches(".*\\([0-9.]+( x [0-9.]+)? mm\\).*"));
    assertThat(buying("mower-lane").lines())
        .filteredOn(line -> line.section().equals("fixings"))
        .noneMatch(line -> line.item().contains(" mm)"));
  }

  /** By hand: 5/8 in is 15.875 mm; 1/2 in is 12.7 mm, of which 16 is 1.26 times. */
  @Test
  void the_metric_bolt_that_is_told_stands_in_for_the_bolt_of_the_job() {
    assertThat(buying("metric-country").metricBolts())
        .isEqualTo("M16 of property class 4.6 or better for 5/8 in (15.9 mm)");
    assertThat(buying("proven-ground").metricBolts())
        .startsWith("M16 of property class 4.6 or better for 1/2 in (12.7 mm)")
        .endsWith("1.26 times those given");
    assertThat(page("metric-country", ListKind.BUYING))
        .contains(
            "none that is thinner or shorter: M16 of property class 4.6 or better for 5/8 in (15.9 mm).")
        .doesNotContain("12.7 mm");
  }

  @Test
  void the_order_of_work_and_the_cut_list_tell_inch_sizes_with_their_millimetres_too() {
    assertThat(page("metric-country", ListKind.ORDER))
        .contains("two 5/8 in (15.9 mm) through bolts", "No. 14 x 4 in (102 mm) structural screws");
    assertThat(page("metric-country", ListKind.CUT_LIST)).contains("for 5/8 in (15.9 mm) bolt");
  }

  /**
   * By hand: three bays of 1.600 m and a post of 145 mm are 4.945 m; what is left of 5.400 m is 455
   * mm, an odd number, so 227 mm of tail at either end and one millimetre over.
   */
  @Test
  void a_piece_that_no_saw_can_cut_from_its_stick_is_left_as_long_as_the_stick() {
    assertThat(page("proven-ground", ListKind.CUT_LIST))
        .contains(
            "H1 is 5399 mm out of a stick of 5400 mm, and no saw takes off so little: leave it as"
                + " it comes, measure from the first end, and let the rest stand over at the last"
                + " end.");
    assertThat(page("proven-ground", ListKind.BUYING))
        .contains("or shorter by less than a saw takes off, is not cut to length");
    assertThat(page("metric-country", ListKind.CUT_LIST)).doesNotContain("no saw takes off");
  }

  private static String page(String scenario, ListKind kind) {
    return TextPage.print(
            ListPages.of(lists(scenario), kind, UnitSystem.METRIC),
            PrintOptions.plain(UnitSystem.METRIC))
        .replaceAll("\\s+", " ");
  }

  /**
   * By hand: 2000 lb x 4.448 N/lb is 8.896 kN and 1200 lb 5.338 kN; what a part must be rated for
   * is never rounded down.
   */
  @Test
  void a_metric_yard_is_asked_for_kilonewtons_and_not_for_pounds() {
    Lists lists = Lists.of(Jobs.wish("stone-terrace", "materials.market=metric"));
    for (ListKind kind : ListKind.values()) {
      assertThat(
              TextPage.print(
                  ListPages.of(lists, kind, UnitSystem.METRIC),
                  PrintOptions.plain(UnitSystem.METRIC)))
          .doesNotContainPattern("[0-9] lb\\b");
    }
    assertThat(
            TextPage.print(
                    ListPages.of(lists, ListKind.BUYING, UnitSystem.METRIC),
                    PrintOptions.plain(UnitSystem.METRIC))
                .replaceAll("\\s+", " "))
        .contains("8.9 kN of lift", "5.4 kN sideways");
  }

  @Test
  void a_metric_job_is_in_millimetres_throughout_and_says_once_how_they_are_rounded() {
    for (ListKind kind : List.of(ListKind.CUT_LIST, ListKind.SET_OUT, ListKind.ORDER)) {
      assertThat(page("metric-country", kind)).doesNotContainPattern("[0-9]\\.[0-9]+ m\\b");
    }
    assertThat(page("metric-country", ListKind.CUT_LIST))
        .containsOnlyOnce("All lengths are in millimeters, rounded to the nearest one.")
        .contains("3721 mm");
    assertThat(page("metric-country", ListKind.SET_OUT))
        .containsOnlyOnce("All lengths are in millimeters, rounded to the nearest one.");
  }

  /** By hand: (1550^2 + 2246^2)^0.5 = 2729: stakes, strings and diagonals are of one walk. */
  @Test
  void stakes_strings_and_diagonals_agree_to_the_millimetre() {
    assertThat(page("metric-country", ListKind.SET_OUT))
        .contains("A1 P1 0 mm 0 mm 1375 mm 3721 mm", "B1 P3 0 mm 2246 mm 1375 mm 3721 mm")
        .contains("A1 to B2 and the other way, 2729 mm");
    assertThat(page("metric-country", ListKind.ORDER)).contains("two rows 2246 mm");
  }

  @Test
  void use_categories_come_from_the_table() {
    Buying buying = buying("bean-row");
    assertThat(buying.aboveGround()).isEqualTo("UC3B");
    assertThat(buying.lines()).anyMatch(line -> line.use().contains("(UC4B)"));
  }

  private static Lists lists(String scenario) {
    return Lists.of(Jobs.scenario(scenario));
  }

  /** 25.4 mm to the inch: a post of 145 mm is told in millimetres beside its 5.709 inches. */
  @Test
  void programs_read_millimetres_beside_inches_in_a_metric_job() {
    String json = ListJson.of(lists("metric-country"), ListKind.CUT_LIST, UnitSystem.METRIC);
    assertThat(json).contains("\"thicknessMm\" : 145.0").contains("\"lengthMm\"");
    assertThat(json).contains("\"thicknessIn\" : 5.709").contains("\"linesMm\"");
    String csv = ListCsv.of(lists("metric-country"), ListKind.CUT_LIST, UnitSystem.METRIC);
    assertThat(csv.lines().findFirst().orElseThrow())
        .contains("length_in", ",thickness_mm,depth_mm,length_mm,");
    assertThat(ListCsv.of(lists("mower-lane"), ListKind.CUT_LIST, UnitSystem.IMPERIAL))
        .doesNotContain("_mm");
    assertThat(ListJson.of(lists("mower-lane"), ListKind.CUT_LIST, UnitSystem.IMPERIAL))
        .doesNotContain("Mm\"");
  }

  @Test
  void the_order_of_a_metric_job_is_told_in_metres_for_programs_too() {
    String json = ListJson.of(lists("metric-country"), ListKind.ORDER, UnitSystem.METRIC);
    assertThat(json).doesNotContainPattern("[0-9]'-[0-9]").contains("\"weightKg\"");
  }

  /**
   * The porch for a metric yard, 6.6 m long in four bays: no 145x195 is longer than 4.8 m, so a 145
   * mm post carries two pieces of header, each on half of it, 72 1/2 mm.
   */
  @Test
  void a_header_that_ends_over_a_post_is_notched_for_half_of_it_and_not_for_a_thin_post() {
    Built built = Jobs.wish("bean-row", "materials.market=metric", "walkway.length=6.6 m");
    assertThat(ListCsv.of(Lists.of(built), ListKind.CUT_LIST, UnitSystem.METRIC))
        .contains("for half of a post of 145 mm")
        .doesNotContain("a post of 72 mm", "a post of 73 mm");
  }
}
