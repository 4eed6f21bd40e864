package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** The buying list as a page: what to ask for, then how the timber is sawn. */
final class BuyingPage {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Buying buying;
  private final boolean priced;
  private final Said said;
  private final Page page;

  private BuyingPage(Buying buying, boolean priced, Said said, Page page) {
    this.buying = buying;
    this.priced = priced;
    this.said = said;
    this.page = page;
  }

  /**
   * @param priced whether a list says what things cost
   */
  static void write(Buying buying, boolean priced, Said said, Page page) {
    BuyingPage list = new BuyingPage(buying, priced, said, page);
    list.totals();
    list.section("timber");
    list.ofOtherKind();
    list.treatment();
    list.savings();
    list.section("fixings");
    list.inchSizes();
    list.section("ground");
    list.section("work");
    list.section("climbers");
    new SawingPage(buying, said, page).write();
  }

  private void totals() {
    Buying.Totals totals = buying.totals();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("pieces", Integer.toString(totals.pieces()));
    blanks.put("sticks", Said.count(totals.sticks()));
    blanks.put("waste", said.percent(totals.wasteRatio()));
    blanks.put("weight", said.weight(totals.weightLb()));
    blanks.put("delivered", said.weight(totals.deliveryLb()));
    blanks.put("cost", cost());
    int specials = buying.timber().stream().mapToInt(TimberPlan::specials).sum();
    if (specials > 0) {
      blanks.put("specials", Said.count(specials));
    }
    page.paragraph(SAYINGS.say("opening", blanks));
  }

  private String cost() {
    if (priced) {
      return listed();
    }
    if (buying.totals().timberCents().isPresent()) {
      long cents = buying.totals().timberCents().getAsLong();
      return SAYINGS.say("cost.priced", "money", said.money(cents));
    }
    boolean some = buying.timber().stream().anyMatch(each -> each.result().cents().isPresent());
    return SAYINGS.say(some ? "cost.some-prices" : "cost.no-prices");
  }

  /** The sum of what has a price, and how many lines have none. */
  private String listed() {
    List<BuyingLine> lines = buying.lines();
    long cents = lines.stream().mapToLong(each -> each.cents().orElse(0)).sum();
    long without = lines.stream().filter(each -> each.cents().isEmpty()).count();
    Map<String, String> blanks = new HashMap<>(Map.of("money", said.money(cents)));
    if (without > 0) {
      blanks.put("without", Long.toString(without));
    }
    return SAYINGS.say("cost.listed", blanks);
  }

  private void ofOtherKind() {
    if (!buying.forOthersOnly().isEmpty()) {
      String timber = String.join("; ", buying.forOthersOnly());
      page.paragraph(SAYINGS.say("other-kind", "timber", timber));
    }
  }

  private void treatment() {
    boolean inTheGround = buying.timber().stream().anyMatch(each -> each.stock().forTheGround());
    String treated = inTheGround ? "treated.other" : "treated.all";
    page.paragraph(
        switch (buying.lasting()) {
          case ALL -> SAYINGS.say("lasting.all");
          case SOME -> SAYINGS.say("lasting.some");
          case NONE -> SAYINGS.say(treated, "category", buying.aboveGround());
        });
  }

  private void inchSizes() {
    if (buying.metricYard()) {
      page.paragraph(
          buying.metricBolts().isEmpty()
              ? SAYINGS.say("inch-sizes")
              : SAYINGS.say("inch-sizes", "bolts", buying.metricBolts()));
    }
  }

  /** What lengths that were changed a little for the yard's sake spare. */
  private void savings() {
    List<Block.Item> items =
        buying.savings().stream()
            .map(each -> new Block.Item(Said.capital(each.what()), saved(each)))
            .toList();
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("saved.heading")).items(items);
    }
  }

  private String saved(Saving saving) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("length", said.length(saving.toIn()));
    blanks.put("wanted", said.length(saving.fromIn()));
    blanks.put("saved", said.length(saving.lengthIn()));
    blanks.put("size", saving.size());
    saving.cents().ifPresent(cents -> blanks.put("money", said.money(cents)));
    return SAYINGS.say(saving.joint() ? "saved.joint" : "saved.timber", blanks);
  }

  private void section(String section) {
    List<List<String>> rows = new ArrayList<>();
    List<String> heads =
        new ArrayList<>(ColumnHeads.of(SAYINGS, "buy", "what", "needed", "spare", "for"));
    if (priced) {
      heads.add(SAYINGS.say("column.cost"));
    }
    rows.add(heads);
    for (BuyingLine line : buying.lines()) {
      if (line.section().equals(section)) {
        rows.add(row(line));
      }
    }
    if (rows.size() > 1) {
      page.heading(SAYINGS.say("section." + section)).add(new Block.Grid(rows));
    }
  }

  private List<String> row(BuyingLine line) {
    List<String> row =
        new ArrayList<>(
            List.of(
                line.bought() > 0 ? bought(line) : "-",
                asked(line),
                said.quantity(line.needed()),
                line.spare().amount() > 0 ? said.quantity(line.spare()) : ""));
    String money = line.cents().isPresent() ? said.money(line.cents().getAsLong()) : "";
    if (priced) {
      row.add(line.use());
      row.add(money.isEmpty() ? SAYINGS.say("unpriced") : money);
    } else {
      row.add(
          money.isEmpty() ? line.use() : SAYINGS.say("priced", "use", line.use(), "money", money));
    }
    return row;
  }

  private static String bought(BuyingLine line) {
    String count = Integer.toString(line.bought());
    boolean plain = line.unit().equals("piece") || line.unit().equals("stick");
    return plain ? count : SAYINGS.say("bought", "count", count, "unit", line.unit());
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
}
