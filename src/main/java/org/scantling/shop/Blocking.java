package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderPiece;
import org.scantling.design.Structure;

/**
 * The blocks that keep crossbeams upright: one between neighbours on each header, standing on it
 * with its top flush with theirs. Over the boards of a pair they stand on the outer one.
 */
final class Blocking {
  static final String ROLE = "blocking";

  private static final Shape.Ends ENDS = new Shape.Ends("one end", "other end");

  private final Built built;
  private final Geometry geometry;

  Blocking(Built built) {
    this.built = built;
    this.geometry = built.geometry();
  }

  List<Placed> all() {
    List<Placed> blocks = new ArrayList<>();
    if (!built.has(ROLE)) {
      return blocks;
    }
    Structure.Member member = built.member(ROLE);
    List<HeaderPiece> runs = built.headerPieces().pieces(false);
    List<Double> alongIn = new Crossbeams(built).alongIn();
    for (int row = 0; row < 2; row++) {
      for (int i = 0; i + 1 < alongIn.size(); i++) {
        double fromIn = alongIn.get(i);
        double toIn = alongIn.get(i + 1);
        HeaderPiece run = Crossbeams.under(runs, (fromIn + toIn) / 2);
        if (!overStep(runs, fromIn, toIn)) {
          blocks.add(between(fromIn, toIn, run, row, member));
        }
      }
    }
    return blocks;
  }

  /** Crossbeams on headers of different levels have no block between them. */
  private boolean overStep(List<HeaderPiece> runs, double fromIn, double toIn) {
    HeaderPiece from = Crossbeams.under(runs, fromIn);
    return built.top().stepped() && !from.equals(Crossbeams.under(runs, toIn));
  }

  private Placed between(
      double fromIn, double toIn, HeaderPiece run, int row, Structure.Member member) {
    double halfIn = built.member("crossbeam").breadthIn() / 2;
    double firstIn = onLine(run, fromIn) + halfIn;
    double lastIn = onLine(run, toIn) - halfIn;
    double overIn = new Crossbeams(built).seatOverIn() + member.depthIn() / 2;
    Shape shape =
        new Shape(
            ROLE,
            member.size(),
            member.breadthIn(),
            member.depthIn(),
            built.tape().nearest(lastIn - firstIn),
            0,
            ENDS,
            EndCut.square(),
            EndCut.square(),
            List.of(),
            List.of());
    return new Placed(
        shape,
        new Place(run.at(firstIn, overIn, acrossIn(row)), run.at(lastIn, overIn, acrossIn(row))));
  }

  private static double onLine(HeaderPiece run, double alongIn) {
    return (alongIn - run.seat().alongIn()) * Math.hypot(1, run.fallRatio());
  }

  private double acrossIn(int row) {
    double outIn =
        built.paired() ? (geometry.posts().breadthIn() + geometry.headers().breadthIn()) / 2 : 0;
    return row == 0 ? -outIn : geometry.plan().rowSpacingIn() + outIn;
  }
}
