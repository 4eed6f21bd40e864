package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** The estimate for the client: the price, what is in it and what is not, without the insides. */
final class ClientEstimate {
  private static final Sayings SAYINGS = EstimateWords.SAYINGS;

  /** Lines that are each a part of their own, such as the delivery. */
  private static final String AROUND = "around";

  private final Estimate estimate;
  private final Cost cost;
  private final EstimateWords words;
  private final Said said;

  ClientEstimate(Estimate estimate, Said said) {
    this.estimate = estimate;
    this.cost = estimate.cost();
    this.words = new EstimateWords(cost);
    this.said = said;
  }

  Page page() {
    Page page = new Page().title(SAYINGS.say("title", "title", estimate.title()));
    page.paragraph(whole());
    price(page);
    List<String> in = included();
    if (!in.isEmpty()) {
      page.heading(SAYINGS.say("client.in")).add(Block.Items.of(in));
    }
    List<String> out = words.leftOut().stream().map(Said::capital).toList();
    if (!out.isEmpty()) {
      page.heading(SAYINGS.say("client.out")).add(Block.Items.of(out));
    }
    page.heading(SAYINGS.say("client.time"))
        .paragraph(
            SAYINGS.say("client.hours", "hours", EstimateWords.hours(estimate.work().hours())));
    return page.paragraph(SAYINGS.say("client.close"));
  }

  private String whole() {
    Estimate.Outline size = estimate.size();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("length", said.length(size.lengthIn()));
    blanks.put("width", said.length(size.widthIn()));
    blanks.put("headroom", said.length(size.headroomIn()));
    blanks.put("posts", Integer.toString(size.posts()));
    if (size.plants() > 0) {
      blanks.put("plants", Integer.toString(size.plants()));
    }
    return SAYINGS.say("client.whole", blanks);
  }

  private void price(Page page) {
    page.heading(SAYINGS.say("client.price"));
    if (!cost.priced()) {
      page.paragraph(SAYINGS.say("client.no-price"));
      return;
    }
    List<Block.Item> items = new ArrayList<>();
    cost.tax()
        .ifPresent(
            percent -> {
              items.add(item("client.before-tax", cost.beforeTax()));
              items.add(
                  new Block.Item(
                      SAYINGS.say("sum.tax", "percent", EstimateWords.percent(percent)),
                      words.money(cost.onAll())));
            });
    items.add(item("sum.total", cost.total()));
    page.items(items);
    if (!cost.without().isEmpty()) {
      page.paragraph(SAYINGS.say("client.partial"));
    }
  }

  private Block.Item item(String saying, java.math.BigDecimal amount) {
    return new Block.Item(SAYINGS.say(saying), words.money(amount));
  }

  /** Each part of the job of which anything has a price; it is said where not all of it has. */
  private List<String> included() {
    return cost.lines().stream()
        .filter(line -> line.price().isPresent())
        .map(line -> line.part().equals(AROUND) ? line.what() : in(line.part()))
        .map(Said::capital)
        .distinct()
        .toList();
  }

  private String in(String part) {
    String all = SAYINGS.say("client.in." + part);
    boolean some =
        cost.lines().stream().anyMatch(line -> line.part().equals(part) && line.price().isEmpty());
    return some ? SAYINGS.say("client.in-part", "part", all) : all;
  }
}
