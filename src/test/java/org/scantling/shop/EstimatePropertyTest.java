package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.scantling.design.Site;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.tables.ItemKey;
import org.scantling.tables.Price;
import org.scantling.tables.PriceList;
import org.scantling.tables.PricedItem;
import org.scantling.tables.PricedItems;
import org.scantling.tables.WorkRow;

/** What holds for the estimate of any job, whatever is priced. */
class EstimatePropertyTest {
  private static final List<String> NAMES =
      List.of("bean-row", "mower-lane", "stone-terrace", "metric-country", "everything-at-once");
  private static final Map<String, Built> JOBS = new HashMap<>();

  private static Built job(int place) {
    return JOBS.computeIfAbsent(NAMES.get(place), Jobs::scenario);
  }

  private static final Map<Built, Lists> LISTS = new HashMap<>();

  /** Sawing takes longest, so each job is bought once. */
  private static Lists lists(Built job) {
    return LISTS.computeIfAbsent(job, each -> Lists.of(each));
  }

  private static Cost cost(Built job, List<Price> prices) {
    Lists lists = lists(job);
    return Costing.of(
        job, lists.buying(), lists.climbers(), lists.work(), new PriceList("p", "USD", prices));
  }

  /** Everything that the job pays for, at prices that a seed draws. */
  private static List<Price> all(Built job, Random random) {
    List<Price> prices = new ArrayList<>();
    for (BuyingLine line : lists(job).buying().lines()) {
      String unit = new LinePrices(new PriceList("", "", List.of()), job).unit(line);
      prices.add(new Price(0, line.key(), unit, drawn(random)));
    }
    for (Climbers.Plant plant : lists(job).climbers().plants()) {
      ItemKey key = ItemKey.of(PricedItems.plant(plant.vine().replace(' ', '-')));
      if (prices.stream().noneMatch(each -> each.item().equals(key))) {
        prices.add(new Price(0, key, PricedItems.EACH, drawn(random)));
      }
    }
    prices.add(of(PricedItem.LABOR_HOUR, PricedItems.HOUR, drawn(random)));
    prices.add(of(PricedItem.DELIVERY, PricedItems.JOB, drawn(random)));
    prices.add(of(PricedItem.TAX, PricedItems.PERCENT, BigDecimal.valueOf(random.nextInt(20))));
    prices.add(of(PricedItem.MARKUP, PricedItems.PERCENT, BigDecimal.valueOf(random.nextInt(40))));
    return prices;
  }

  private static Price of(PricedItem item, String unit, BigDecimal amount) {
    return new Price(0, ItemKey.of(item), unit, amount);
  }

  private static BigDecimal drawn(Random random) {
    return BigDecimal.valueOf(random.nextInt(100_000), 3);
  }

  @Property(tries = 40)
  void more_prices_never_lower_a_total(
      @ForAll @IntRange(max = 4) int place, @ForAll @IntRange(max = 100_000) int seed) {
    Random random = new Random(seed);
    Built job = job(place);
    List<Price> prices = all(job, random);
    Collections.shuffle(prices, random);
    BigDecimal before = BigDecimal.ZERO;
    for (int some = 1; some <= prices.size(); some += 7) {
      BigDecimal total = cost(job, prices.subList(0, some)).total();
      assertThat(total).isGreaterThanOrEqualTo(before);
      before = total;
    }
  }

  @Property(tries = 40)
  void the_order_of_the_prices_makes_no_difference(
      @ForAll @IntRange(max = 4) int place, @ForAll @IntRange(max = 100_000) int seed) {
    Random random = new Random(seed);
    Built job = job(place);
    List<Price> prices = all(job, random);
    List<Price> shuffled = new ArrayList<>(prices);
    Collections.shuffle(shuffled, random);

    assertThat(cost(job, shuffled)).isEqualTo(cost(job, prices));
  }

  @Property(tries = 40)
  void what_has_no_price_is_listed_exactly_once_and_nothing_else_is(
      @ForAll @IntRange(max = 4) int place, @ForAll @IntRange(max = 100_000) int seed) {
    Random random = new Random(seed);
    Built job = job(place);
    List<Price> prices = all(job, random);
    Collections.shuffle(prices, random);
    int some = random.nextInt(prices.size() + 1);
    Set<String> left = new TreeSet<>();
    prices.subList(some, prices.size()).forEach(each -> left.add(each.item().text()));
    left.remove(PricedItem.MARKUP.word());

    assertThat(cost(job, prices.subList(0, some)).without())
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(left);
  }

  /** A row that no structure uses, or an amount that no row is for, would be counted by nobody. */
  @Property(tries = 1)
  void every_row_of_the_work_table_is_for_something_and_all_work_has_its_row() {
    Set<String> rows = new TreeSet<>();
    House.TABLES.work().rows().stream().map(WorkRow::id).forEach(rows::add);
    Set<String> used = new TreeSet<>();
    for (Built job : jobsOfAllKinds()) {
      used.addAll(WorkAmounts.of(job, Pieces.of(job), lists(job).climbers()).keySet());
    }

    assertThat(rows).containsAll(used);
    rows.removeAll(used);
    assertThat(rows)
        .as("soils that these sites do not have")
        .containsExactlyInAnyOrder("dig.bedrock", "dig.foliated-rock", "dig.other");
  }

  private static Built read(String file) {
    Site site = new SiteReader(Vocabulary.of(House.TABLES)).read(Path.of(file)).site();
    return new Built(House.propose(site), site, House.TABLES, Optional.empty());
  }

  private static List<Built> jobsOfAllKinds() {
    List<Built> jobs = new ArrayList<>();
    for (int place = 0; place < NAMES.size(); place++) {
      jobs.add(job(place));
    }
    jobs.add(Jobs.scenario("heavy-snow"));
    jobs.add(Jobs.scenario("past-the-pipe"));
    jobs.add(read("src/test/resources/rulecases/sites/steep-ramp.yaml"));
    jobs.add(read("src/test/resources/rulecases/sites/deep-crossbeams.yaml"));
    jobs.add(Jobs.scenario("deep-frost"));
    jobs.add(Jobs.wish("step-free", "preferences.header=on-top"));
    return jobs;
  }

  /** Names are what a price list goes by, so no two lines may share one. */
  @Property(tries = 5)
  void every_line_of_a_buying_list_has_a_name_that_a_price_list_may_have(
      @ForAll @IntRange(max = 4) int place) {
    PricedItems items = new PricedItems(House.TABLES);
    List<BuyingLine> lines = lists(job(place)).buying().lines();

    assertThat(lines).extracting(BuyingLine::key).doesNotHaveDuplicates();
    for (BuyingLine line : lines) {
      String unit = new LinePrices(new PriceList("", "", List.of()), job(place)).unit(line);
      assertThat(items.units(line.key().item())).as(line.key().text()).contains(unit);
    }
  }
}
