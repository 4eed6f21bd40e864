package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.scantling.cutting.Allowance;
import org.scantling.cutting.Cut;
import org.scantling.cutting.CuttingPlan;
import org.scantling.cutting.CuttingProblem;
import org.scantling.cutting.CuttingStock;
import org.scantling.cutting.PieceDemand;
import org.scantling.cutting.Stick;
import org.scantling.tables.Sold;
import org.scantling.tables.Yard;

/** Plans how the pieces of one size are sawn from the lengths sold. */
final class Sawing {
  private final Built built;
  private final Tape tape;
  private final TimberPlan.Stock stock;
  private final List<String> roles;
  private final Sold sold;

  Sawing(Built built, TimberPlan.Stock stock, List<String> roles, Sold sold) {
    this.roles = roles;
    this.built = built;
    this.tape = built.tape();
    this.stock = stock;
    this.sold = sold;
  }

  TimberPlan plan(List<Piece> pieces, List<TimberPlan.Special> special) {
    if (pieces.isEmpty()) {
      TimberPlan.Result none = new TimberPlan.Result(false, true, 0, 0, 0, OptionalLong.empty());
      return new TimberPlan(stock, roles, List.of(), special, List.of(), none);
    }
    TreeMap<Integer, List<Piece>> byLength = new TreeMap<>(java.util.Comparator.reverseOrder());
    for (Piece piece : pieces) {
      byLength.computeIfAbsent(cutTicks(piece.shape()), ticks -> new ArrayList<>()).add(piece);
    }
    CuttingPlan plan = CuttingStock.solve(problem(byLength));
    List<StickCut> cuts = cuts(plan, byLength);
    List<TimberPlan.Spare> spare = spare(plan, byLength.firstKey());
    return new TimberPlan(stock, roles, cuts, special, spare, result(plan, pieces, spare, special));
  }

  /**
   * What is left on until a piece stands is cut short where no stick is long enough for all of it.
   */
  private int cutTicks(Shape shape) {
    return Math.min(tape.ticksUp(shape.cutIn()), tape.ticksDown(sold.longestIn()));
  }

  private CuttingProblem problem(TreeMap<Integer, List<Piece>> byLength) {
    List<PieceDemand> demands = new ArrayList<>();
    byLength.forEach(
        (ticks, pieces) ->
            demands.add(new PieceDemand(ticks, pieces.stream().mapToInt(Piece::count).sum())));
    return new CuttingProblem(
        demands,
        sticks(),
        new Allowance(
            tape.ticksUp(built.shop("stock.kerf")),
            tape.ticksUp(built.shop("stock.end-trim")),
            tape.ticksUp(built.shop("stock.knots"))));
  }

  /** Lengths that the saw cannot tell apart are one, at the lower price. */
  private List<Stick> sticks() {
    TreeMap<Integer, Long> costs = new TreeMap<>();
    for (Yard.Offer offer : sold.offers()) {
      int ticks = tape.ticksDown(offer.lengthIn());
      costs.merge(ticks, sold.priced() ? offer.cents().getAsLong() : ticks, Math::min);
    }
    List<Stick> sticks = new ArrayList<>();
    costs.forEach((ticks, cost) -> sticks.add(new Stick(ticks, cost)));
    return sticks;
  }

  /** Deals the marks of each length out to the sticks, the first marks first. */
  private List<StickCut> cuts(CuttingPlan plan, TreeMap<Integer, List<Piece>> byLength) {
    List<Integer> ticks = new ArrayList<>(byLength.keySet());
    List<List<String>> waiting = new ArrayList<>();
    for (List<Piece> pieces : byLength.values()) {
      List<String> marks = new ArrayList<>();
      pieces.forEach(piece -> piece.places().forEach(place -> marks.add(piece.mark())));
      waiting.add(marks);
    }
    Map<StickCut, Integer> times = new LinkedHashMap<>();
    for (Cut cut : plan.cuts()) {
      for (int stick = 0; stick < cut.times(); stick++) {
        StickCut one =
            new StickCut(boughtIn(cut.stick()), 1, dealt(cut, waiting), ends(cut, ticks));
        times.merge(one, 1, Integer::sum);
      }
    }
    List<StickCut> cuts = new ArrayList<>();
    times.forEach(
        (one, count) -> cuts.add(new StickCut(one.lengthIn(), count, one.marks(), one.ends())));
    return cuts;
  }

  private StickCut.Ends ends(Cut cut, List<Integer> ticks) {
    if (cut.pieces() > 1) {
      return StickCut.Ends.BOTH;
    }
    int overTicks = cut.stick().lengthTicks() - ticks.get(cut.counts().indexOf(1));
    if (overTicks < tape.ticksUp(built.shop("stock.kerf"))) {
      return StickCut.Ends.NEITHER;
    }
    return overTicks < 2 * tape.ticksUp(built.shop("stock.end-trim"))
        ? StickCut.Ends.ONE
        : StickCut.Ends.BOTH;
  }

  private static List<String> dealt(Cut cut, List<List<String>> waiting) {
    List<String> marks = new ArrayList<>();
    for (int i = 0; i < waiting.size(); i++) {
      for (int piece = 0; piece < cut.counts().get(i); piece++) {
        marks.add(waiting.get(i).remove(0));
      }
    }
    return marks;
  }

  /** The length as sold, not as the saw counts it. */
  private double boughtIn(Stick stick) {
    return sold.offers().stream()
        .filter(offer -> tape.ticksDown(offer.lengthIn()) == stick.lengthTicks())
        .findFirst()
        .orElseThrow()
        .lengthIn();
  }

  /** Some sticks over, each long enough for the longest piece. */
  private List<TimberPlan.Spare> spare(CuttingPlan plan, int longestTicks) {
    int count = (int) Math.ceil(built.shop("stock.waste-share") * plan.sticks() - 1e-9);
    double lengthIn = sold.holding(tape.inches(longestTicks)).orElseThrow().lengthIn();
    return count > 0 ? List.of(new TimberPlan.Spare(lengthIn, count)) : List.of();
  }

  private TimberPlan.Result result(
      CuttingPlan plan,
      List<Piece> pieces,
      List<TimberPlan.Spare> spare,
      List<TimberPlan.Special> special) {
    double piecesIn =
        pieces.stream().mapToDouble(each -> each.count() * each.shape().lengthIn()).sum();
    double boughtIn =
        plan.cuts().stream().mapToDouble(each -> each.times() * boughtIn(each.stick())).sum();
    OptionalLong cents = OptionalLong.empty();
    if (sold.priced() && special.isEmpty()) {
      long extra = spare.stream().mapToLong(this::cents).sum();
      cents = OptionalLong.of(plan.cost() + extra);
    }
    return new TimberPlan.Result(
        sold.priced(), plan.proven(), plan.gapRatio(), piecesIn, boughtIn, cents);
  }

  private long cents(TimberPlan.Spare spare) {
    Yard.Offer offer = sold.holding(spare.lengthIn()).orElseThrow();
    return spare.count() * offer.cents().getAsLong();
  }
}
