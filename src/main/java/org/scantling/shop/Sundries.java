package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.scantling.quantity.Length;
import org.scantling.sayings.Sayings;
import org.scantling.tables.ItemKey;
import org.scantling.tables.PricedItem;

/** What the order of work uses up or borrows: braces, stakes, boards, string, preservative. */
final class Sundries {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private static final int CORNERS = 4;
  private static final double FOOT = 12;

  private static final double LAST_BITS = 1e-9;

  private final Built built;
  private final Pieces pieces;
  private final List<BuyingLine> lines = new ArrayList<>();

  Sundries(Built built, Pieces pieces) {
    this.built = built;
    this.pieces = pieces;
  }

  /** Temporary braces: every post has its own, since all stand before any hole is filled. */
  int braces() {
    return whole("brace.temporary") * built.geometry().postCount();
  }

  /** Temporary blocks: one a post under a header on top, one a board under a pair. */
  int blocks() {
    return (built.paired() ? 2 : 1) * built.geometry().postCount();
  }

  List<BuyingLine> lines() {
    bracing();
    stakes();
    packing();
    tops();
    auger();
    return List.copyOf(lines);
  }

  private void bracing() {
    String size = word("brace.temporary." + built.market());
    double blockIn = built.shop("block.temporary-length");
    double stickIn = nearestSoldIn(size, built.shop("brace.temporary-length"), blockIn);
    int fromAStick = (int) Math.floor(stickIn / blockIn + LAST_BITS);
    int forBlocks = (blocks() + fromAStick - 1) / fromAStick;
    line(
        PricedItem.TEMPORARY_BRACE,
        SAYINGS.say("bracing", "size", size, "length", length(stickIn)),
        braces() + forBlocks,
        SAYINGS.say(
            "bracing.use",
            "braces",
            Integer.toString(braces()),
            "blocks",
            Integer.toString(blocks())));
  }

  /** The length sold nearest to one that is wanted, of those that a block can be cut from. */
  private double nearestSoldIn(String size, double wantedIn, double blockIn) {
    return built.sold(size).lengthsIn().stream()
        .filter(each -> each + LAST_BITS >= blockIn)
        .min(Comparator.comparingDouble(each -> Math.abs(each - wantedIn)))
        .orElse(Math.max(wantedIn, blockIn));
  }

  private void stakes() {
    int posts = built.geometry().postCount();
    int corners = CORNERS * whole("setout.stakes-corner");
    line(
        PricedItem.STAKE,
        SAYINGS.say("stake", "length", length(built.shop("setout.stake-length"))),
        posts + corners + braces(),
        SAYINGS.say(
            "stake.use",
            "holes",
            Integer.toString(posts),
            "batter-boards",
            Integer.toString(corners),
            "braces",
            Integer.toString(braces())));
    int boards = whole("setout.boards-corner");
    line(
        PricedItem.BATTER_BOARD,
        SAYINGS.say("board", "length", length(built.shop("setout.board-length"))),
        CORNERS * boards,
        SAYINGS.say("board.use", "count", Integer.toString(boards)));
  }

  /** Braces along the walk stand off their posts by what the headers are wider. */
  private void packing() {
    double gapIn = Braces.packingIn(built);
    if (gapIn > 0) {
      line(
          PricedItem.PACKING,
          SAYINGS.say("packing", "gap", length(built.tape().nearest(gapIn))),
          CORNERS * built.geometry().plan().bays(),
          SAYINGS.say("packing.use"));
    }
  }

  /** Posts between two boards end in the open. */
  private void tops() {
    if (built.paired()) {
      line(
          PricedItem.POST_CAP,
          word("post.cap"),
          built.geometry().postCount(),
          SAYINGS.say("cap.use"));
    }
  }

  private void auger() {
    Holes holes = new Holes(built);
    if (holes.fromAbove()) {
      line(
          PricedItem.AUGER_RENTAL,
          SAYINGS.say("auger"),
          1,
          SAYINGS.say("auger.use", "depth", length(built.tape().nearest(holes.deepestIn()))));
    }
  }

  /** What is sold in rolls and cans, with the unit that it is counted in. */
  Map<Fixing, String> packed() {
    Map<Fixing, String> packed = new LinkedHashMap<>();
    packed.put(packed("string", SAYINGS.say("string"), stringFt()), "ft");
    packed.put(packed("preservative", word("treat.preservative"), cuts()), "cuts");
    int sunk = sunkHeads();
    if (sunk > 0) {
      packed.put(packed("plug", word("lag.plug"), sunk), "pieces");
    }
    return packed;
  }

  private static Fixing packed(String id, String name, int count) {
    return new Fixing(id, name, count, SAYINGS.say("packed." + id));
  }

  /** Two rows, two ends, each out to the batter boards, and the level line beside one row. */
  private int stringFt() {
    double outIn = 2 * built.shop("setout.batter-boards");
    double alongIn = built.geometry().lengthIn() + outIn;
    double acrossIn = built.geometry().plan().rowSpacingIn() + outIn;
    return (int) Math.ceil((3 * alongIn + 2 * acrossIn) / FOOT - 1e-9);
  }

  /** Both ends of every piece, and whatever is cut into it. */
  int cuts() {
    return pieces.all().stream()
        .mapToInt(
            each ->
                each.count() * (2 + each.shape().recesses().size() + each.shape().bores().size()))
        .sum();
  }

  private int sunkHeads() {
    return pieces.of("header").stream()
        .mapToInt(
            each ->
                each.count()
                    * (int)
                        each.shape().bores().stream()
                            .filter(bore -> bore.face().equals("top"))
                            .count())
        .sum();
  }

  private String word(String row) {
    return built.tables().defaults().row(row).word();
  }

  private String length(double lengthIn) {
    return built.tape() == Tape.MILLIMETRES
        ? Length.millimetres(lengthIn)
        : Length.feetAndInches(lengthIn);
  }

  private void line(PricedItem key, String item, int count, String use) {
    lines.add(
        new BuyingLine(
            ItemKey.of(key),
            "work",
            item,
            new BuyingLine.Quantity(count, "pieces"),
            new BuyingLine.Quantity(0, "pieces"),
            count,
            "piece",
            use,
            OptionalLong.empty()));
  }

  private int whole(String row) {
    return (int) built.shop(row);
  }
}
