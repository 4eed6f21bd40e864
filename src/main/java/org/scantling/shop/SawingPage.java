package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** How the sticks are cut up, as a part of the buying list. */
final class SawingPage {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Buying buying;
  private final Said said;
  private final Page page;

  SawingPage(Buying buying, Said said, Page page) {
    this.buying = buying;
    this.said = said;
    this.page = page;
  }

  void write() {
    page.heading(SAYINGS.say("sawing.heading"));
    for (TimberPlan plan : buying.timber()) {
      if (!plan.cuts().isEmpty()) {
        page.paragraph(proof(plan)).add(new Block.Grid(rows(plan)));
      }
    }
    if (buying.timber().stream().anyMatch(each -> each.cuts(StickCut.Ends.NEITHER))) {
      page.paragraph(SAYINGS.say("ends.neither"));
    }
    if (buying.timber().stream().anyMatch(each -> each.cuts(StickCut.Ends.ONE))) {
      page.paragraph(SAYINGS.say("ends.one"));
    }
  }

  private String proof(TimberPlan plan) {
    TimberPlan.Result result = plan.result();
    String sought = result.byCost() ? "least-cost" : "least-length";
    return SAYINGS.say(
        "sawing." + (result.proven() ? sought : "near-" + sought),
        "sticks",
        sticks(plan.stock()),
        "gap",
        said.percent(result.gapRatio()),
        "waste",
        said.percent(result.wasteRatio()));
  }

  private static String sticks(TimberPlan.Stock stock) {
    return stock.forTheGround()
        ? SAYINGS.say("sawing.for-the-ground", "sticks", stock.called())
        : stock.called();
  }

  private List<List<String>> rows(TimberPlan plan) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "sticks", "of", "each-into"));
    for (StickCut cut : plan.cuts()) {
      rows.add(
          List.of(Integer.toString(cut.times()), said.length(cut.lengthIn()), into(cut.marks())));
    }
    return rows;
  }

  private static String into(List<String> marks) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    marks.forEach(mark -> counts.merge(mark, 1, Integer::sum));
    List<String> each = new ArrayList<>();
    counts.forEach(
        (mark, count) ->
            each.add(
                count > 1
                    ? SAYINGS.say("sawing.several", "count", Integer.toString(count), "mark", mark)
                    : mark));
    return String.join(", ", each);
  }
}
