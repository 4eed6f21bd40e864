package org.scantling.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;

/** The cut list as a page: pieces, then what is cut into each, then what is cut together. */
final class CutListPage {
  private static final Sayings SAYINGS = Sayings.of("cut-list");

  private final Lists lists;
  private final Said said;
  private final Page page;

  private CutListPage(Lists lists, Said said, Page page) {
    this.lists = lists;
    this.said = said;
    this.page = page;
  }

  /** Adds the list to a page. */
  static void write(Lists lists, Said said, Page page) {
    CutListPage list = new CutListPage(lists, said, page);
    list.opening();
    list.pieces();
    list.cuts();
    list.gangs();
    list.tails();
  }

  private void opening() {
    int count = lists.pieces().all().stream().mapToInt(Piece::count).sum();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("pieces", Integer.toString(count));
    blanks.put("kinds", Said.count(lists.pieces().all().size()));
    lists.pieces().all().stream()
        .mapToDouble(each -> each.shape().spareIn())
        .filter(spareIn -> spareIn > 0)
        .findFirst()
        .ifPresent(spareIn -> blanks.put("spare", said.length(spareIn)));
    page.paragraph(SAYINGS.say("opening", blanks));
    if (!lists.pieces().open().isEmpty()) {
      page.heading(SAYINGS.say("open.heading")).add(Block.Items.of(lists.pieces().open()));
    }
  }

  private void pieces() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "mark", "count", "piece", "length", "ends"));
    for (Piece piece : lists.pieces().all()) {
      rows.add(
          List.of(
              piece.mark(),
              Integer.toString(piece.count()),
              named(piece.shape()),
              said.length(piece.shape().lengthIn()),
              new EndWords(said).both(piece.shape())));
    }
    page.heading(SAYINGS.say("pieces.heading")).add(new Block.Grid(rows));
    new Uncut(lists, said).told().forEach(page::paragraph);
  }

  private String named(Shape shape) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("role", shape.role());
    blanks.put("size", shape.size());
    if (ripped(shape)) {
      blanks.put("depth", said.length(shape.depthIn()));
    }
    lists.timberNamed(shape.role()).ifPresent(timber -> blanks.put("timber", timber));
    return SAYINGS.say("piece", blanks);
  }

  /** A block is as deep as a crossbeam over its seat: the timber of the crossbeams, ripped. */
  private boolean ripped(Shape shape) {
    return shape.role().equals(Blocking.ROLE)
        && lists.pieces().of("crossbeam").stream()
            .anyMatch(each -> each.shape().depthIn() > shape.depthIn() + 1e-6);
  }

  private void cuts() {
    CutItems items = new CutItems(said, lists.postIn());
    page.heading(SAYINGS.say("cuts.heading")).items(items.of(lists.pieces().all()));
    page.paragraph(SAYINGS.say("origins"));
    rails();
    if (lists.pieces().of("header").stream().anyMatch(CutListPage::bolted)) {
      page.paragraph(SAYINGS.say("posts-bored"));
    }
    lists.sunkHeads().ifPresent(this::sunk);
    lists
        .footOverGroundIn()
        .ifPresent(
            footIn ->
                page.paragraph(
                    SAYINGS.say(
                        lists.onBrackets() ? "foot.bracket" : "foot.base",
                        "height",
                        said.length(footIn))));
  }

  /** Where their housings are marked from. */
  private void rails() {
    lists
        .railsOverLineIn()
        .ifPresent(
            overIn ->
                page.paragraph(
                    SAYINGS.say(
                        overIn < 0 ? "rails.below-line" : "rails.above-line",
                        "height",
                        said.length(Math.abs(overIn)))));
    if (lists.railsByThePost()) {
      page.paragraph(SAYINGS.say("rails.by-the-post"));
    }
  }

  private void sunk(Lists.SunkHeads heads) {
    page.paragraph(
        SAYINGS.say(
            "sunk-heads",
            "depth",
            said.length(heads.deepIn()),
            "width",
            said.length(heads.wideIn()),
            "lead",
            said.length(heads.leadIn())));
  }

  private static boolean bolted(Piece header) {
    return header.shape().bores().stream().anyMatch(each -> each.face().equals("side"));
  }

  private void gangs() {
    List<Block.Item> items = lists.gangs().stream().map(this::together).toList();
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("gangs.heading")).items(items);
    }
    if (lists.housedFromOneSide()) {
      page.paragraph(SAYINGS.say("left-and-right"));
    }
    if (lists.pieces().all().stream().anyMatch(CutListPage::offCenter)) {
      page.paragraph(SAYINGS.say("off-center"));
    }
  }

  private Block.Item together(Gang gang) {
    return new Block.Item(
        SAYINGS.say(
            "gang.marks",
            "marks",
            String.join(", ", gang.marks()),
            "count",
            Integer.toString(gang.count())),
        SAYINGS.say(
            "gang.lines",
            "end",
            gang.from(),
            "lines",
            said.lengths(gang.linesIn()),
            "depth",
            said.length(gang.depthIn())));
  }

  private static boolean offCenter(Piece piece) {
    return piece.shape().bores().stream().anyMatch(each -> each.offIn() != 0);
  }

  /** One template for all crossbeams whose tails are alike. */
  private void tails() {
    Map<EndCut.Shaped, List<String>> marks = new LinkedHashMap<>();
    for (Piece piece : lists.pieces().of("crossbeam")) {
      if (piece.shape().first() instanceof EndCut.Shaped shaped) {
        marks.computeIfAbsent(shaped, tail -> new ArrayList<>()).add(piece.mark());
      }
    }
    marks.forEach(this::template);
  }

  private void template(EndCut.Shaped shaped, List<String> marks) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "back", "down"));
    for (EndCut.Corner corner : shaped.outline()) {
      rows.add(List.of(said.length(corner.backIn()), said.length(corner.downIn())));
    }
    page.heading(SAYINGS.say("tails.heading", "marks", Said.all(marks)))
        .paragraph(SAYINGS.say("tails." + shaped.kind()))
        .add(new Block.Grid(rows));
  }
}
