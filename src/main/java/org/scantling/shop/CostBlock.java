package org.scantling.shop;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** What a job costs in a few lines: the total, what it leaves out, the hours. */
public final class CostBlock {
  private static final Sayings SAYINGS = EstimateWords.SAYINGS;
  private static final int MOST_NAMED = 4;

  private final Estimate estimate;
  private final EstimateWords words;

  public CostBlock(Estimate estimate) {
    this.estimate = estimate;
    this.words = new EstimateWords(estimate.cost());
  }

  /** With a heading of its own. */
  public Page page() {
    return new Page().heading(SAYINGS.say("block.heading")).paragraph(total()).paragraph(out());
  }

  String total() {
    Cost cost = estimate.cost();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("hours", EstimateWords.hours(estimate.work().hours()));
    blanks.put("hands", Integer.toString(estimate.work().hands()));
    if (!cost.priced()) {
      return SAYINGS.say("block.no-price", blanks);
    }
    blanks.put("total", words.money(cost.total()));
    blanks.put("prices", estimate.priceList());
    int left = cost.without().size();
    if (left > 0) {
      blanks.put("left", Integer.toString(left));
    }
    return SAYINGS.say("block.total", blanks);
  }

  /** The total, for a cell of a table. */
  public String cell() {
    return estimate.cost().priced() ? words.money(estimate.cost().total()) : SAYINGS.say("none");
  }

  /** How many things it leaves out, for a cell of a table. */
  public String leftOut() {
    int left = estimate.cost().without().size();
    return left == 0 ? SAYINGS.say("nothing") : Integer.toString(left);
  }

  /** The hours, for a cell of a table. */
  public String hours() {
    return EstimateWords.hours(estimate.work().hours());
  }

  private String out() {
    List<String> out = words.leftOut();
    if (out.isEmpty()) {
      return SAYINGS.say("block.whole");
    }
    Map<String, String> blanks = new HashMap<>();
    boolean many = out.size() > MOST_NAMED;
    blanks.put("items", String.join("; ", many ? out.subList(0, MOST_NAMED) : out));
    if (many) {
      blanks.put("more", Integer.toString(out.size() - MOST_NAMED));
    }
    return SAYINGS.say("block.without", blanks);
  }
}
