package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.scantling.answers.Answers;
import org.scantling.design.CutHeaders;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderPiece;
import org.scantling.design.Splice;
import org.scantling.design.TopLine;
import org.scantling.reasons.Candidate;
import org.scantling.tables.Sold;

/**
 * The ways in which a header can be pieced together: whole, or cut over posts into as few pieces as
 * the lengths sold allow, all but the first and the last alike.
 */
public final class HeaderCuts {
  private static final double LAST_BITS = 1e-9;

  private final Geometry geometry;
  private final TopLine top;
  private final List<Double> soldIn;
  private final boolean stepped;
  private final String decided;

  /**
   * @param soldIn lengths sold, shortest first
   * @param decided the way that was chosen, empty before
   */
  HeaderCuts(TopLine top, List<Double> soldIn, String decided) {
    this.geometry = top.geometry();
    this.top = top;
    this.soldIn = soldIn;
    this.stepped = top.stepped() && top.posts() > 2;
    this.decided = decided;
  }

  public static HeaderCuts of(CheckContext context) {
    Answers answers = context.answers();
    String size = answers.option(HEADER_SIZE);
    String decided = answers.find(HEADER_SPLICE).map(each -> each.option()).orElse("");
    TopLine top = TopLines.of(context);
    HeaderCuts here = new HeaderCuts(top, context.soldIn(HEADER_SIZE), decided);
    return here.canBeCut()
        ? here
        : new HeaderCuts(
            top,
            Sold.anywhere(context.stock().row(size).id(), context.tables()).lengthsIn(),
            decided);
  }

  /**
   * The lengths that the headers are cut from: the yard's own, or where it sells none that reaches
   * from post to post, what a special order brings.
   */
  public List<Double> soldIn() {
    return soldIn;
  }

  private boolean canBeCut() {
    return longestIn(Splice.bayByBay(bays()).bays()) <= longestSoldIn() + LAST_BITS;
  }

  /**
   * The pieces that the headers are built of, as far as that is decided. Before, or where what was
   * decided is of another number of bays, the most even of the ways is taken for it: pieces are
   * decided after the timbers, and the last run through the questions begins with its own answers,
   * so it works with the pieces that are built.
   */
  Splice splice() {
    if (stepped) {
      return Splice.bayByBay(bays());
    }
    if (!needed()) {
      return Splice.whole(bays());
    }
    boolean holds = !decided.isEmpty() && Splice.of(decided).bayCount() == bays();
    List<Candidate.Cut> ways = holds ? List.of() : ways();
    return Splice.of(holds ? decided : ways.get(ways.size() - 1).option());
  }

  /** True where no length sold holds the whole header, or the top goes down in steps. */
  public boolean needed() {
    return stepped || wholeIn() > longestSoldIn() + LAST_BITS;
  }

  /**
   * In steps, one piece a bay. Else the whole header first, then its ways of being cut, those with
   * the most even pieces last and of them those that look the same from both ends.
   */
  public List<Candidate.Cut> ways() {
    List<Candidate.Cut> ways = new ArrayList<>();
    if (stepped) {
      ways.add(cut(Splice.bayByBay(bays()).bays()));
      return ways;
    }
    ways.add(cut(List.of(bays())));
    List<List<Integer>> fewest = List.of();
    int most = mostBays();
    int least = most > 0 ? (bays() + most - 1) / most : bays() + 1;
    for (int pieces = Math.max(2, least); pieces <= bays() && fewest.isEmpty(); pieces++) {
      fewest = inPieces(pieces, most);
    }
    fewest.stream()
        .sorted(
            Comparator.comparing(HeaderCuts::unevenness).reversed().thenComparing(HeaderCuts::even))
        .map(this::cut)
        .forEach(ways::add);
    return ways;
  }

  /** No more bays than these are as long as what is sold, tails and plumb cuts left out. */
  private int mostBays() {
    double bayIn = geometry.plan().along().shortestIn() * top.stretchRatio();
    return Math.min(bays(), (int) ((longestSoldIn() + LAST_BITS) / bayIn));
  }

  /**
   * @param most bays of a piece that are worth trying
   */
  private List<List<Integer>> inPieces(int pieces, int most) {
    if (!geometry.plan().along().even()) {
      return unevenWays(pieces, most, bays()).stream()
          .filter(way -> longestIn(way) <= longestSoldIn() + LAST_BITS)
          .toList();
    }
    List<List<Integer>> ways = new ArrayList<>();
    int between = pieces - 2;
    int mostBetween = between == 0 ? 1 : most;
    for (int middle = 1; middle <= mostBetween; middle++) {
      int ends = bays() - middle * between;
      // A way from the other end is the same way.
      for (int first = (ends + 1) / 2; first < ends && first <= most; first++) {
        List<Integer> way = new ArrayList<>();
        way.add(first);
        for (int i = 0; i < between; i++) {
          way.add(middle);
        }
        way.add(ends - first);
        if (longestIn(way) <= longestSoldIn() + LAST_BITS) {
          ways.add(way);
        }
      }
    }
    return ways;
  }

  /** All ways to share so many bays among so many pieces. */
  private static List<List<Integer>> unevenWays(int pieces, int most, int bays) {
    if (pieces == 1) {
      return bays <= most ? List.of(List.of(bays)) : List.of();
    }
    List<List<Integer>> ways = new ArrayList<>();
    for (int first = 1; first <= Math.min(most, bays - pieces + 1); first++) {
      for (List<Integer> rest : unevenWays(pieces - 1, most, bays - first)) {
        List<Integer> way = new ArrayList<>(List.of(first));
        way.addAll(rest);
        ways.add(way);
      }
    }
    return ways;
  }

  private Candidate.Cut cut(List<Integer> way) {
    String option = new Splice(way).way();
    double boughtIn = piecesIn(way).stream().mapToDouble(this::soldFor).sum();
    int shared = geometry.headers().paired() ? shared(way) : 0;
    return new Candidate.Cut(HEADER_SPLICE, option, way.size(), longestIn(way), boughtIn, shared);
  }

  private double soldFor(double neededIn) {
    return soldIn.stream()
        .filter(each -> each + LAST_BITS >= neededIn)
        .findFirst()
        .orElse(neededIn);
  }

  private double longestIn(List<Integer> way) {
    return Collections.max(piecesIn(way));
  }

  private List<Double> piecesIn(List<Integer> way) {
    return new CutHeaders(top, new Splice(way))
        .pieces(false).stream().map(HeaderPiece::lengthIn).toList();
  }

  /** The same from both ends. */
  private static boolean even(List<Integer> way) {
    return way.get(0).equals(way.get(way.size() - 1));
  }

  private static int unevenness(List<Integer> way) {
    return way.stream().max(Integer::compare).orElseThrow()
        - way.stream().min(Integer::compare).orElseThrow();
  }

  private int shared(List<Integer> way) {
    List<Integer> cuts = new Splice(way).cuts();
    if (!geometry.plan().along().mirrored()) {
      return cuts.size();
    }
    return (int) cuts.stream().filter(each -> cuts.contains(bays() - each)).count();
  }

  private int bays() {
    return geometry.plan().bays();
  }

  private double wholeIn() {
    return piecesIn(List.of(bays())).get(0);
  }

  private double longestSoldIn() {
    return soldIn.get(soldIn.size() - 1);
  }
}
