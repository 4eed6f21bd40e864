package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** The buying list as a page: what to ask for, then how the timber is sawn. */
final class BuyingPage {
  private final Buying buying;
  private final Said said;
  private final Page page;

  private BuyingPage(Buying buying, Said said, Page page) {
    this.buying = buying;
    this.said = said;
    this.page = page;
  }

  static void write(Buying buying, Said said, Page page) {
    BuyingPage list = new BuyingPage(buying, said, page);
    list.totals();
    list.section("timber", "Timber");
    list.forOthersOnly();
    list.treatment();
    list.savings();
    list.section("fixings", "Fixings");
    list.inchSizes();
    list.section("ground", "For the ground");
    list.section("work", "For the work itself");
    list.section("climbers", "For the climbers");
    list.sawing();
  }

  private void totals() {
    Buying.Totals totals = buying.totals();
    String cost =
        totals.timberCents().isPresent()
            ? "timber " + said.money(totals.timberCents().getAsLong()) + " by the yard's list"
            : somePrices() ? "some sizes have no price, so no sum is given" : "no prices given";
    page.paragraph(
        totals.pieces()
            + " pieces out of "
            + Said.counted(totals.sticks(), "stick", "sticks")
            + ", spares included"
            + specials()
            + "; "
            + said.percent(totals.wasteRatio())
            + " of what is cut up is left over; "
            + said.weight(totals.weightLb())
            + " of timber, wet from the yard; "
            + said.weight(totals.deliveryLb())
            + " delivered, with all bags; cost: "
            + cost
            + ".");
  }

  private String specials() {
    int count = buying.timber().stream().mapToInt(TimberPlan::specials).sum();
    return count > 0 ? " and " + Said.counted(count, "special order", "special orders") : "";
  }

  private boolean somePrices() {
    return buying.timber().stream().anyMatch(each -> each.result().cents().isPresent());
  }

  private void forOthersOnly() {
    if (!buying.forOthersOnly().isEmpty()) {
      page.paragraph(
          "The yard's list has the size but not the kind of "
              + String.join("; ", buying.forOthersOnly())
              + ": its lengths here are those that yards usually have, and it has no price.");
    }
  }

  private void treatment() {
    if (buying.lasting() == Buying.Lasting.ALL) {
      page.paragraph(
          "This is a species whose heartwood lasts untreated and whose sapwood does not:"
              + " buy heartwood, without sapwood.");
      return;
    }
    if (buying.lasting() == Buying.Lasting.SOME) {
      page.paragraph(
          "Where a line says heartwood, the species lasts untreated but for its sapwood: buy it"
              + " without sapwood. Where it says a use category, buy it treated for that.");
      return;
    }
    boolean inTheGround = buying.timber().stream().anyMatch(each -> each.stock().forTheGround());
    page.paragraph(
        (inTheGround ? "All other timber" : "All of it")
            + " is clear of the ground and out in the weather: buy it treated for that ("
            + buying.aboveGround()
            + "), or the heartwood of a species that lasts.");
  }

  private void inchSizes() {
    if (buying.metricYard()) {
      page.paragraph(
          "The fasteners are inch sizes, as they were worked out, with their millimeters. Where"
              + " only metric ones are sold, take none that is thinner or shorter"
              + (buying.metricBolts().isEmpty() ? "" : ": " + buying.metricBolts())
              + ".");
    }
  }

  /** What lengths that were changed a little for the yard's sake spare. */
  private void savings() {
    List<Block.Item> items = new ArrayList<>();
    for (Saving saving : buying.savings()) {
      String money =
          saving.cents().isPresent() ? ", " + said.money(saving.cents().getAsLong()) : "";
      items.add(
          new Block.Item(
              Said.capital(saving.what()),
              said.length(saving.toIn())
                  + " instead of "
                  + said.length(saving.fromIn())
                  + (saving.joint()
                      ? ", which is longer than the yard sells: no joint, no special order"
                      : " saves "
                          + said.length(saving.lengthIn())
                          + " of "
                          + saving.size()
                          + money)));
    }
    if (!items.isEmpty()) {
      page.heading("Saved by a small change").items(items);
    }
  }

  private void section(String section, String heading) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("buy", "what", "needed", "spare", "for"));
    for (BuyingLine line : buying.lines()) {
      if (line.section().equals(section)) {
        rows.add(row(line));
      }
    }
    if (rows.size() > 1) {
      page.heading(heading).add(new Block.Grid(rows));
    }
  }

  private List<String> row(BuyingLine line) {
    boolean plain = line.unit().equals("piece") || line.unit().equals("stick");
    String bought = plain ? Integer.toString(line.bought()) : line.bought() + " x " + line.unit();
    String cost = line.cents().isPresent() ? "; " + said.money(line.cents().getAsLong()) : "";
    return List.of(
        line.bought() > 0 ? bought : "-",
        asked(line),
        said.quantity(line.needed()),
        line.spare().amount() > 0 ? said.quantity(line.spare()) : "",
        (line.use() + cost).replaceFirst("^; ", ""));
  }

  /** What the yard must be told, in one breath. */
  private static String asked(BuyingLine line) {
    BuyingLine.Kind kind = line.kind();
    // Where a job has several timbers the item names its own.
    String timber = line.item().contains(kind.timber()) ? "" : kind.timber();
    // The item of a stick for the ground says heartwood already.
    String treatment = line.item().contains(", " + kind.treatment()) ? "" : kind.treatment();
    return Stream.of(line.item(), timber, treatment, kind.finish())
        .filter(each -> !each.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private void sawing() {
    page.heading("How to cut the sticks");
    for (TimberPlan plan : buying.timber()) {
      if (!plan.cuts().isEmpty()) {
        page.paragraph(name(plan) + ": " + proof(plan.result()));
        page.add(new Block.Grid(rows(plan)));
      }
    }
    if (buying.timber().stream().anyMatch(each -> each.cuts(StickCut.Ends.NEITHER))) {
      page.paragraph(
          "A piece as long as its stick, or shorter by less than a saw takes off, is not cut to"
              + " length: pick sticks that are that long and square at both ends.");
    }
    if (buying.timber().stream().anyMatch(each -> each.cuts(StickCut.Ends.ONE))) {
      page.paragraph(
          "A piece that leaves too little of its stick to square both ends is cut at one: pick"
              + " sticks whose other end is square.");
    }
  }

  private static String name(TimberPlan plan) {
    return plan.stock().called() + (plan.stock().forTheGround() ? " for the ground" : "");
  }

  private String proof(TimberPlan.Result result) {
    String sought = result.byCost() ? "cost" : "length";
    String best =
        result.proven()
            ? "no other way of cutting takes less " + sought
            : "no other way takes over " + said.percent(result.gapRatio()) + " less " + sought;
    return best + "; " + said.percent(result.wasteRatio()) + " left over.";
  }

  private List<List<String>> rows(TimberPlan plan) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("sticks", "of", "each into"));
    for (StickCut cut : plan.cuts()) {
      rows.add(
          List.of(Integer.toString(cut.times()), said.length(cut.lengthIn()), into(cut.marks())));
    }
    return rows;
  }

  private static String into(List<String> marks) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    marks.forEach(mark -> counts.merge(mark, 1, Integer::sum));
    List<String> words = new ArrayList<>();
    counts.forEach((mark, count) -> words.add(count > 1 ? count + " " + mark : mark));
    return String.join(", ", words);
  }
}
