package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.PriceFile;
import org.scantling.tables.PriceList;

/**
 * The estimate of scenarios/bean-row.yaml worked with pencil and paper, from the first hole to the
 * last plant. Its pieces, holes and lists are those of HandWorkedTest; the minutes are the rows of
 * work.csv (common practice, no source); the prices are made up for the sum.
 */
class EstimateTest {
  private static final Built BEAN_ROW = Jobs.scenario("bean-row");

  private static final String ALL =
      """
      item,unit,price,currency,note
      6x6x14 UC4B,each,48.75,USD,
      6x8x20,each,96.40,,
      2x8x10,each,14.85,,
      2x6x8,each,8.90,,
      2x6x12,each,13.35,,
      2x4x8,each,5.45,,
      2x4x16,each,11.20,,
      screw.14.4,box of 50,31.50,,
      lag.1-2.10,each,3.85,,
      washer.1-2,each,0.385,,
      screw.10.3,box of 100,14.25,,
      pad,each,6.50,,
      gravel,cu yd,62,,
      temporary-brace,each,4.10,,
      stake,each,1.15,,
      batter-board,each,2.20,,
      string,250 ft roll,9.95,,
      preservative,1 qt can,24.60,,
      plug,each,0.35,,
      wire-twining,100 ft coil,18.40,,
      tensioner,each,4.75,,
      eye-twining,bag of 25,22.75,,
      plant-hops,each,12.50,,
      labor-hour,hour,45,,
      disposal,cu yd,28.50,,
      auger-rental,job,85,,
      delivery,lb,0.0125,,
      materials-tax,percent,6.5,,
      markup,percent,12.5,,
      tax,percent,3,,
      """;

  @TempDir private Path folder;

  private Estimate estimate(String prices) throws IOException {
    Path file = Files.writeString(folder.resolve("prices.csv"), prices);
    PriceList list = PriceFile.read(file, House.TABLES, Optional.empty());
    return Lists.of(BEAN_ROW).priced(Optional.of(list)).estimate();
  }

  private static String page(EstimateFor whom, Estimate estimate) {
    return TextPage.print(
            whom.page(estimate, UnitSystem.IMPERIAL), PrintOptions.plain(UnitSystem.IMPERIAL))
        .replaceAll("\\s+", " ");
  }

  private static BigDecimal cents(String amount) {
    return new BigDecimal(amount);
  }

  /**
   * Setting out: 4 corners at 30 and 8 holes at 6: 168 minutes, 2.8 hours, 3.
   *
   * <p>Digging in sandy gravel: 93.084 cubic feet at 10, and 28 of the 64 in, 40.724 cubic feet,
   * deeper than 36 at 5 more: 930.84 + 203.62 = 1134.46, 18.91 hours, 19.
   *
   * <p>Filling: 8 beds at 15, 15898.9 x 8 / 1728 = 73.606 cubic feet of gravel round the posts at
   * 5: 120 + 368.03 = 488.03, 8.13, 8 1/4.
   *
   * <p>Posts: 8 at 30, 16 braces at 8, 8 tops at 12: 240 + 128 + 96 = 464, 7.73, 7 3/4.
   *
   * <p>Cutting: a foot of 8 posts, two ends of 2 headers, 6 rails and 18 pickets, 60 at 3; 20 tails
   * at 10: 380, 6.33, 6 1/2. Notching: 12 housings, 8 notches in headers, 20 in crossbeams, 40 at
   * 12: 480, 8. Boring: 16 at 3: 48, 0.8, 1. Preservative on 88 ends, 40 notches and 16 holes: 144,
   * 2.4, 2 1/2.
   *
   * <p>Lifting: 10 crossbeams of 37 lb, one person each, at 10; 2 headers of 299 lb at 75: 250,
   * 4.17, 4 1/4. Fastening: 40 screws of crossbeams and 96 of rails and pickets at 1, 16 lag screws
   * at 5: 216, 3.6, 3 3/4; the 88 of temporary braces and blocks go in with them. Sides: 6 rails at
   * 15, 18 pickets at 6: 198, 3.3, 3 1/2.
   *
   * <p>Planting: 8 at 30, 6 runs at 10, 24 eyes and 24 holes at 2: 396, 6.6, 6 3/4. Clearing: 16
   * braces at 3, 116.355 cubic feet of soil at 2, 90 for the job: 370.71, 6.18, 6 1/4.
   */
  @Test
  void hours() throws IOException {
    WorkHours work = estimate(ALL).work();

    assertThat(work.tasks())
        .extracting(Task::id, task -> task.hours().doubleValue(), Task::hands)
        .containsExactly(
            tuple("setout", 3.0, 2),
            tuple("dig", 19.0, 2),
            tuple("fill", 8.25, 1),
            tuple("posts", 7.75, 2),
            tuple("cut", 6.5, 1),
            tuple("notch", 8.0, 1),
            tuple("bore", 1.0, 1),
            tuple("treat", 2.5, 1),
            tuple("lift", 4.25, 3),
            tuple("fasten", 3.75, 1),
            tuple("sides", 3.5, 1),
            tuple("plant", 6.75, 1),
            tuple("clear", 6.25, 1));
    assertThat(work.hours()).isEqualByComparingTo("80.5");
    assertThat(work.hands()).isEqualTo(3);
  }

  /**
   * Timber: 9 x 48.75 + 3 x 96.40 + 11 x 14.85 + 8.90 + 3 x 13.35 + 5.45 + 6 x 11.20 = 438.75 +
   * 289.20 + 163.35 + 8.90 + 40.05 + 5.45 + 67.20 = 1012.90. Fixings: 31.50 + 18 x 3.85 + 18 x
   * 0.385 + 3 x 14.25 = 31.50 + 69.30 + 6.93 + 42.75 = 150.48. Ground: 8 x 6.50, and 90.57 / 27 =
   * 3.354 cubic yards, 3.4 x 62: 52 + 210.80 = 262.80. Work: 17 x 4.10 + 36 x 1.15 + 8 x 2.20 +
   * 9.95 + 2 x 24.60 + 18 x 0.35 = 69.70 + 41.40 + 17.60 + 9.95 + 49.20 + 6.30 = 194.15. Wires: 2 x
   * 18.40 + 7 x 4.75 + 2 x 22.75 = 36.80 + 33.25 + 45.50 = 115.55. Plants: 8 x 12.50 = 100.
   * Together 1835.88.
   *
   * <p>Tax on it: 6.5 percent, 119.3322, 119.33. Labor: 80.5 x 45 = 3622.50. Soil: 116.355 / 27 =
   * 4.309, 4.4 x 28.50 = 125.40; auger 85; 3044 lb of timber and 182 bags of 50 lb, 12144 x 0.0125
   * = 151.80: 362.20. So far 1835.88 + 119.33 + 3622.50 + 362.20 = 5939.91; markup 12.5 percent,
   * 742.48875, 742.49; 6682.40. Tax 3 percent, 200.472, 200.47: 6882.87.
   */
  @Test
  void cost() throws IOException {
    Cost cost = estimate(ALL).cost();

    assertThat(cost.sum(line -> line.part().equals("timber"))).isEqualTo(cents("1012.90"));
    assertThat(cost.sum(line -> line.part().equals("fixings"))).isEqualTo(cents("150.48"));
    assertThat(cost.sum(line -> line.part().equals("ground"))).isEqualTo(cents("262.80"));
    assertThat(cost.sum(line -> line.part().equals("work"))).isEqualTo(cents("194.15"));
    assertThat(cost.sum(line -> line.part().equals("climbers"))).isEqualTo(cents("115.55"));
    assertThat(cost.sum(line -> line.part().equals("plants"))).isEqualTo(cents("100.00"));
    assertThat(cost.sum(CostLine::goods)).isEqualTo(cents("1835.88"));
    assertThat(cost.onMaterials()).isEqualTo(cents("119.33"));
    assertThat(cost.sum(line -> line.part().equals("labor"))).isEqualTo(cents("3622.50"));
    assertThat(cost.sum(line -> line.part().equals("around"))).isEqualTo(cents("362.20"));
    assertThat(cost.markedUp()).isEqualTo(cents("742.49"));
    assertThat(cost.beforeTax()).isEqualTo(cents("6682.40"));
    assertThat(cost.onAll()).isEqualTo(cents("200.47"));
    assertThat(cost.total()).isEqualTo(cents("6882.87"));
    assertThat(cost.without()).isEmpty();
  }

  @Test
  void the_client_gets_price_tax_and_total_and_none_of_the_insides() throws IOException {
    String page = page(EstimateFor.CLIENT, estimate(ALL));

    assertThat(page)
        .contains("A garden walk 17'-6\" long, 5'-10 1/2\" wide between the posts")
        .contains("on 8 posts, planted with 8 climbers.")
        .contains("- Price: 6,682.40 USD - Tax, 3 %: 200.47 USD - Total: 6,882.87 USD")
        .contains("About 80 1/2 hours of work")
        .doesNotContain("Not included", "arkup", "45.00", "48.75", "3,622.50", "work.csv");
    assertThat(EstimateFor.CLIENT.csv(estimate(ALL))).doesNotContain("markup", "labor", "48.75");
    assertThat(EstimateFor.CLIENT.json(estimate(ALL))).doesNotContain("markup", "labor", "48.75");
  }

  @Test
  void the_builder_gets_every_line_every_task_with_its_rows_and_every_sum() throws IOException {
    String page = page(EstimateFor.BUILDER, estimate(ALL));

    assertThat(page)
        .contains("6,882.87 USD by")
        .contains("6x6 x 14'-0\", treated 9 48.75 438.75")
        .contains("93.1 cu ft x 10 min a cubic foot (dig.sandy-gravel)")
        .contains("10 x 10 min (lift.one);", "75 min (lift.more)")
        .contains("common practice, no source")
        .contains("- Markup, 12.5 %: 742.49 USD")
        .contains("rounded up to 0.1 of its unit", "up to 0.25 of an hour")
        .doesNotContain("Not priced");
    assertThat(EstimateFor.BUILDER.csv(estimate(ALL)))
        .contains("ground,gravel,gravel,3.4,cu yd,62.00,210.80,USD\n")
        .contains("hours,dig,digging,19,hour,,,\n", "sum,total,,,,,6882.87,USD\n");
  }

  @Test
  void what_has_no_price_is_named_and_no_price_is_made_up_for_it() throws IOException {
    Estimate estimate = estimate("item,unit,price,currency,note\npad,each,6.50,USD,\n");

    assertThat(estimate.cost().total()).isEqualTo(cents("52.00"));
    assertThat(estimate.cost().without())
        .hasSize(27)
        .doesNotHaveDuplicates()
        .contains("6x6x14 UC4B southern-pine No.2", "labor-hour", "delivery", "disposal", "tax")
        .doesNotContain("pad", "markup");
    assertThat(page(EstimateFor.CLIENT, estimate))
        .contains("What is named under 'Not included' below is not in this price.")
        .contains("- Labor", "- Tax")
        .contains("- What goes into the holes, except what is named below");
  }

  @Test
  void where_nothing_is_priced_there_is_no_total() throws IOException {
    Estimate estimate = Lists.of(BEAN_ROW).estimate();

    assertThat(estimate.cost().priced()).isFalse();
    assertThat(page(EstimateFor.BUILDER, estimate))
        .startsWith("Estimate: Bean row behind the stable")
        .contains("Nothing is priced. 80 1/2 hours of work")
        .doesNotContain("Total:", "0.00");
    assertThat(EstimateFor.CLIENT.json(estimate)).contains("\"amount\" : null");
  }

  @Test
  void a_price_by_a_pack_that_the_job_does_not_buy_is_refused_at_its_line() {
    assertThatThrownBy(
            () ->
                estimate(
                    "item,unit,price,currency,note\npad,each,1,USD,\ngravel,25 kg bag,7,USD,\n"))
        .hasMessageEndingWith(
            "prices.csv:3: unit: found '25 kg bag', accepted is one of 50 lb bag, cu yd, cu ft, m3:"
                + " this job buys it so");
  }
}
