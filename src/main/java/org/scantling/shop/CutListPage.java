package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** The cut list as a page: pieces, then what is cut into each, then what is cut together. */
final class CutListPage {
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
    list.pieces();
    list.cuts();
    list.gangs();
    list.tails();
  }

  private void pieces() {
    int count = lists.pieces().all().stream().mapToInt(Piece::count).sum();
    page.paragraph(
        count
            + " pieces of "
            + Said.counted(lists.pieces().all().size(), "kind", "kinds")
            + ". Lengths are finished lengths to the long points. "
            + spare()
            + "Brush preservative on every cut, notch and hole.");
    if (!lists.pieces().open().isEmpty()) {
      page.heading("Settle before anything is cut").add(Block.Items.of(lists.pieces().open()));
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("mark", "count", "piece", "length", "ends"));
    for (Piece piece : lists.pieces().all()) {
      Shape shape = piece.shape();
      rows.add(
          List.of(
              piece.mark(),
              Integer.toString(piece.count()),
              shape.role() + " " + shape.size() + ripped(shape) + lists.timberNamed(shape.role()),
              said.length(shape.lengthIn()),
              new EndWords(said).both(shape)));
    }
    page.heading("Pieces").add(new Block.Grid(rows));
    new Uncut(lists, said).told().forEach(page::paragraph);
  }

  /** A block is as deep as a crossbeam over its seat: the timber of the crossbeams, ripped. */
  private String ripped(Shape shape) {
    boolean ripped =
        shape.role().equals(Blocking.ROLE)
            && lists.pieces().of("crossbeam").stream()
                .anyMatch(each -> each.shape().depthIn() > shape.depthIn() + 1e-6);
    return ripped ? ", ripped to " + said.length(shape.depthIn()) : "";
  }

  private String spare() {
    return lists.pieces().all().stream()
        .filter(each -> each.shape().spareIn() > 0)
        .findFirst()
        .map(
            each ->
                "Posts are cut "
                    + said.length(each.shape().spareIn())
                    + " longer, and their tops are cut once they stand. ")
        .orElse("");
  }

  private void cuts() {
    List<Block.Item> items = new ArrayList<>();
    for (Piece piece : lists.pieces().all()) {
      recesses(piece, items);
      bores(piece, items);
    }
    page.heading("Notches and holes").items(items);
    origins();
    railsByThePost();
    if (lists.pieces().of("header").stream().anyMatch(each -> bolted(each))) {
      page.paragraph("The posts are bored once they stand, through the holes in the boards.");
    }
    lists.sunkHeads().ifPresent(this::sunk);
    lists
        .footOverGroundIn()
        .ifPresent(
            footIn ->
                page.paragraph(
                    "The foot of a post is assumed to be "
                        + said.length(footIn)
                        + " above the ground. Where "
                        + lists.underFoot()
                        + " and crown hold it higher, cut the housings lower by as much."));
  }

  /** Where every measure of the list starts. */
  private void origins() {
    page.paragraph(
        "Every post is measured from its foot, and every crossbeam from its tip on the side of row"
            + " A, the near tip. The first end of a header is its end toward A1, or the other one"
            + " where the set-out says turned.");
    lists
        .railsOverLineIn()
        .ifPresent(
            overIn ->
                page.paragraph(
                    "Housings for rails are marked from the level line once the posts stand,"
                        + " centers "
                        + said.length(Math.abs(overIn))
                        + (overIn < 0 ? " below" : " above")
                        + " it; use the distance from the foot only as a check."));
  }

  private void railsByThePost() {
    if (lists.railsByThePost()) {
      page.paragraph(
          "Housings for rails are marked from the level line once the posts stand, on every post"
              + " where the set-out has them; use the distance from the foot only as a check.");
    }
  }

  private void sunk(Lists.SunkHeads heads) {
    page.paragraph(
        "Holes on the top of a header are sunk "
            + said.length(heads.deepIn())
            + " deep, "
            + said.length(heads.wideIn())
            + " wide, for head and washer: crossbeams lie over them. Lead holes in the posts, bored"
            + " through them, are "
            + said.length(heads.leadIn())
            + " wide.");
  }

  private static boolean bolted(Piece header) {
    return header.shape().bores().stream().anyMatch(each -> each.face().equals("side"));
  }

  private void recesses(Piece piece, List<Block.Item> items) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Recess each : piece.shape().recesses()) {
      String edges = said.length(each.fromIn()) + " to " + said.length(each.toIn());
      alike.computeIfAbsent(recess(piece, each), key -> new ArrayList<>()).add(edges);
    }
    alike.forEach((what, edges) -> items.add(item(piece, what, String.join("; ", edges))));
  }

  private static Block.Item item(Piece piece, String what, String places) {
    String from = "From the " + piece.shape().ends().first() + ": ";
    return new Block.Item(piece.mark(), what + " " + from + places + ".");
  }

  private String recess(Piece piece, Recess recess) {
    boolean through = recess.acrossIn() >= piece.shape().breadthIn() - 1e-6;
    return (recess.seat().role().equals("rail") ? "housing on the " : "notch on the ")
        + recess.face()
        + ", "
        + said.length(recess.widthIn())
        + " wide for "
        + recess.told(said, lists.postIn())
        + ", "
        + said.length(recess.depthIn())
        + " deep"
        + (through ? "." : ", " + said.length(recess.acrossIn()) + " across.");
  }

  private void bores(Piece piece, List<Block.Item> items) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Bore each : piece.shape().bores()) {
      alike.computeIfAbsent(bore(each), key -> new ArrayList<>()).add(place(each));
    }
    alike.forEach((what, places) -> items.add(item(piece, what, String.join(", ", places))));
  }

  private String bore(Bore bore) {
    return said.length(bore.diameterIn())
        + " holes on the "
        + bore.face()
        + " for "
        + bore.what()
        + ".";
  }

  private String place(Bore bore) {
    String at = said.length(bore.atIn());
    if (bore.offIn() == 0) {
      return at;
    }
    return at + " (" + (bore.offIn() > 0 ? "+" : "") + said.length(bore.offIn()) + ")";
  }

  private void gangs() {
    List<Block.Item> items = new ArrayList<>();
    for (Gang gang : lists.gangs()) {
      items.add(
          new Block.Item(
              String.join(", ", gang.marks()) + ", " + gang.count() + " together",
              gang.from()
                  + " flush; lines across at "
                  + said.lengths(gang.linesIn())
                  + "; cut "
                  + said.length(gang.depthIn())
                  + " deep."));
    }
    if (!items.isEmpty()) {
      page.heading("Cut together").items(items);
    }
    if (lists.pieces().of("post").stream().anyMatch(CutListPage::openToOneSide)) {
      page.paragraph(
          "Left and right of a post are as seen with its top up and the cut side facing you.");
    }
    if (lists.pieces().all().stream().anyMatch(CutListPage::offMiddle)) {
      page.paragraph(
          "In parentheses: how far a hole is off the centerline of its face; plus is toward the top"
              + " edge of a side, and on a top to the left, looking from the first end.");
    }
  }

  private static boolean openToOneSide(Piece piece) {
    return piece.shape().recesses().stream().anyMatch(each -> each.face().contains("open to"));
  }

  private static boolean offMiddle(Piece piece) {
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
    rows.add(List.of("back from the tip", "down from the top edge"));
    for (EndCut.Corner corner : shaped.outline()) {
      rows.add(List.of(said.length(corner.backIn()), said.length(corner.downIn())));
    }
    page.heading("Template of the tails, " + String.join(" and ", marks))
        .paragraph(
            "The base's tail, drawn on the new depth. Join the points"
                + (shaped.kind().equals("curve") ? " by a fair curve." : " by straight lines."))
        .add(new Block.Grid(rows));
  }
}
