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

  private static final Shape.Ends ENDS = Shape.Ends.named("one", "other");

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
    List<Crossbeams.Lying> lying = new Crossbeams(built).lying();
    for (int row = 0; row < 2; row++) {
      for (int i = 0; i + 1 < lying.size(); i++) {
        Crossbeams.Lying from = lying.get(i);
        Crossbeams.Lying to = lying.get(i + 1);
        HeaderPiece run = Crossbeams.under(runs, (from.alongIn() + to.alongIn()) / 2);
        if (!overStep(runs, from.alongIn(), to.alongIn())) {
          blocks.add(between(from, to, run, row, member));
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
      Crossbeams.Lying from,
      Crossbeams.Lying to,
      HeaderPiece run,
      int row,
      Structure.Member member) {
    double firstIn = onLine(run, from.alongIn()) + from.breadthIn() / 2;
    double lastIn = onLine(run, to.alongIn()) - to.breadthIn() / 2;
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
