package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FreshWeight;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Sold;

/** Plans the timber of a whole job, size by size. */
final class Timbers {
  private Timbers() {}

  static List<TimberPlan> of(Built built, Pieces pieces) {
    Map<TimberPlan.Stock, List<Piece>> bySize = new LinkedHashMap<>();
    for (Piece piece : pieces.all()) {
      bySize.computeIfAbsent(stock(built, piece), stock -> new ArrayList<>()).add(piece);
    }
    List<TimberPlan> plans = new ArrayList<>();
    bySize.forEach((stock, cut) -> plans.add(plan(built, stock, cut)));
    return plans;
  }

  /**
   * Posts in the ground are treated for it and are not cut from the same sticks as the rest; nor is
   * what is of another species or grade.
   */
  static TimberPlan.Stock stock(Built built, Piece piece) {
    SizeRow size = built.tables().size(piece.shape().size());
    String role = piece.shape().role();
    PieceTimber timber = built.timber(role);
    return new TimberPlan.Stock(
        size.id(),
        called(built, size, timber),
        role.equals("post") && built.inTheGround(),
        size.thicknessIn(),
        size.widthIn(),
        timber,
        FreshWeight.pcf(
            built.tables(),
            built.tables().designValues(timber.species(), timber.grade(), size).wetWeightPcf()));
  }

  private static String called(Built built, SizeRow size, PieceTimber timber) {
    return built.mixed()
        ? Sayings.of("pieces").say("stock", "size", size.id(), "timber", timber.words())
        : size.id();
  }

  /** How pieces of one stock are sawn; those longer than anything sold are ordered specially. */
  static TimberPlan plan(Built built, TimberPlan.Stock stock, List<Piece> pieces) {
    Sold sold = built.sold(stock);
    List<TimberPlan.Special> special = new ArrayList<>();
    List<Piece> cut = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.shape().lengthIn() > sold.longestIn() + built.tape().tickIn() / 2) {
        special.add(new TimberPlan.Special(piece.mark(), piece.shape().cutIn(), piece.count()));
      } else {
        cut.add(piece);
      }
    }
    List<String> roles = pieces.stream().map(each -> each.shape().role()).distinct().toList();
    return new Sawing(built, stock, roles, sold).plan(cut, special);
  }
}
