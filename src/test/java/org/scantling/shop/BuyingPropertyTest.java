package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.PackRow;
import org.scantling.tables.Yard;

/**
 * Over random sites: every piece is bought once, and nothing is bought that is not used or spare.
 */
class BuyingPropertyTest {
  @Provide
  Arbitrary<Jobs.Random> jobs() {
    return Jobs.any();
  }

  /** A yard with lengths and prices of its own for the commonest size. */
  @Provide
  Arbitrary<Optional<Yard>> yards() {
    return Combinators.combine(
            Arbitraries.integers().between(7, 20).set().ofMinSize(1).ofMaxSize(6),
            Arbitraries.integers().between(50, 300),
            Arbitraries.of("2x4", "2x6", "4x4"))
        .as(
            (feet, price, size) ->
                Optional.of(
                    new Yard(
                        "yard.csv",
                        feet.stream().sorted().map(each -> offer(size, each, price)).toList())))
        .injectNull(0.3)
        .map(each -> each == null ? Optional.<Yard>empty() : each);
  }

  private static Yard.Offer offer(String size, int feet, int price) {
    return new Yard.Offer(size, feet * 12.0, OptionalLong.of((long) feet * price + feet % 3 * 7L));
  }

  @Property(tries = 24, seed = "20260602", edgeCases = EdgeCasesMode.NONE)
  void every_piece_is_cut_once_and_every_stick_is_used(
      @ForAll("jobs") Jobs.Random job, @ForAll("yards") Optional<Yard> yard) {
    Jobs.of(job, yard).ifPresent(BuyingPropertyTest::check);
  }

  @Tag("slow")
  @Property(tries = 80, seed = "20120715", edgeCases = EdgeCasesMode.NONE)
  void every_piece_is_cut_once_and_every_stick_is_used_on_many_sites(
      @ForAll("jobs") Jobs.Random job, @ForAll("yards") Optional<Yard> yard) {
    Jobs.of(job, yard).ifPresent(BuyingPropertyTest::check);
  }

  private static void check(Built built) {
    Pieces pieces = Pieces.of(built);
    Climbers climbers = new Planting(built).climbers();
    Buying buying = new Purchase(built, pieces, climbers).buying();
    everyPieceOnce(pieces, buying);
    buying.timber().forEach(plan -> sticksHold(built, pieces, plan));
    nothingUnused(buying);
    new WorkOrderBuilder(built, pieces, climbers)
        .order(new StepWords(built, pieces, climbers, UnitSystem.IMPERIAL));
  }

  private static void everyPieceOnce(Pieces pieces, Buying buying) {
    Map<String, Integer> bought = new HashMap<>();
    for (TimberPlan plan : buying.timber()) {
      for (StickCut cut : plan.cuts()) {
        cut.marks().forEach(mark -> bought.merge(mark, cut.times(), Integer::sum));
      }
      plan.special().forEach(each -> bought.merge(each.mark(), each.count(), Integer::sum));
    }
    Map<String, Integer> needed = new HashMap<>();
    pieces.all().forEach(each -> needed.put(each.mark(), each.count()));
    assertThat(bought).isEqualTo(needed);
  }

  private static void sticksHold(Built built, Pieces pieces, TimberPlan plan) {
    double kerf = built.shop("stock.kerf");
    double lost = 2 * built.shop("stock.end-trim") + built.shop("stock.knots");
    for (StickCut cut : plan.cuts()) {
      double used = 0;
      for (String mark : cut.marks()) {
        used += shape(pieces, mark).lengthIn();
        assertThat(shape(pieces, mark).size()).isEqualTo(plan.stock().size());
      }
      int count = cut.marks().size();
      double needed = count == 1 ? used : used + (count - 1) * kerf + lost;
      assertThat(needed).isLessThanOrEqualTo(cut.lengthIn() + built.tape().tickIn() / 2);
    }
    assertThat(plan.result().gapRatio()).isLessThan(0.005);
    assertThat(plan.result().wasteRatio()).isBetween(-1e-9, 1.0);
  }

  private static Shape shape(Pieces pieces, String mark) {
    return pieces.all().stream()
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow()
        .shape();
  }

  private static void nothingUnused(Buying buying) {
    double sticks = 0;
    for (BuyingLine line : buying.lines()) {
      assertThat(line.needed().amount()).as(line.item()).isGreaterThanOrEqualTo(0);
      if (line.section().equals("timber")) {
        assertThat(line.bought() * 1.0)
            .as(line.item())
            .isEqualTo(line.needed().amount() + line.spare().amount());
        sticks += line.needed().amount();
      }
    }
    int cut =
        buying.timber().stream()
            .flatMap(each -> each.cuts().stream())
            .mapToInt(StickCut::times)
            .sum();
    int special =
        buying.timber().stream()
            .flatMap(each -> each.special().stream())
            .mapToInt(TimberPlan.Special::count)
            .sum();
    assertThat(sticks).isEqualTo(cut + special, within(1e-9));
    for (TimberPlan plan : buying.timber()) {
      int sawn = plan.cuts().stream().mapToInt(StickCut::times).sum();
      int spare = plan.spare().stream().mapToInt(TimberPlan.Spare::count).sum();
      assertThat(spare).as("a tenth of %s", sawn).isBetween(sawn / 10, sawn / 10 + 1);
      assertThat(plan.cuts()).allMatch(each -> !each.marks().isEmpty());
    }
  }

  @Property(tries = 16, seed = "5", edgeCases = EdgeCasesMode.NONE)
  void packs_hold_what_is_needed_and_spare_and_no_pack_is_bought_in_vain(
      @ForAll("jobs") Jobs.Random job) {
    Jobs.of(job).ifPresent(BuyingPropertyTest::packs);
  }

  @Tag("slow")
  @Property(tries = 50, seed = "20120716", edgeCases = EdgeCasesMode.NONE)
  void packs_hold_what_is_needed_and_spare_on_many_sites(@ForAll("jobs") Jobs.Random job) {
    Jobs.of(job).ifPresent(BuyingPropertyTest::packs);
  }

  private static void packs(Built built) {
    Pieces pieces = Pieces.of(built);
    Climbers climbers = new Planting(built).climbers();
    List<BuyingLine> lines = new Purchase(built, pieces, climbers).buying().lines();
    for (BuyingLine line : lines) {
      int inAPack =
          built.tables().packs().rows().stream()
              .filter(each -> line.item().contains(name(each.id(), built)))
              .flatMap(each -> inAPack(each, line.unit()).stream())
              .findFirst()
              .orElse(1);
      if (line.section().equals("fixings")) {
        double wanted = line.needed().amount() + line.spare().amount();
        assertThat(line.bought() * inAPack).as(line.item()).isGreaterThanOrEqualTo((int) wanted);
        assertThat((line.bought() - 1) * inAPack).as(line.item()).isLessThan((int) wanted);
      }
    }
    assertThat(lines).extracting(BuyingLine::item).doesNotHaveDuplicates();
  }

  /** How many are in a pack of that name, wherever it is sold. */
  private static Optional<Integer> inAPack(PackRow row, String unit) {
    if (row.metricWords().equals(unit)) {
      return Optional.of(row.metricCount());
    }
    return row.words().equals(unit) ? Optional.of(row.count()) : Optional.empty();
  }

  private static String name(String id, Built built) {
    return built.tables().fasteners().find(id).map(each -> each.name()).orElse(id);
  }
}
