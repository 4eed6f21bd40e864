package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.BoltPattern;
import org.scantling.design.CutHeaders;
import org.scantling.design.HeaderPiece;
import org.scantling.reasons.Question;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;

/** The bolts of paired headers, post by post. */
final class HeaderBolts {
  private static final int IN_A_COLUMN = 2;

  private final JointRow joint;
  private final FastenerRow bolt;
  private final InchSizes sizes;
  private final double holeIn;
  private final BoltPattern usual;
  private final BoltPattern overJoint;
  private final CutHeaders runs;

  /** A bolt off the middle of the post, and below the top of the boards. */
  record Spot(double offPostIn, double belowIn) {}

  HeaderBolts(Built built) {
    this.joint = built.joint(Question.HEADER_JOINT);
    this.bolt = built.fastener(joint).orElseThrow();
    this.sizes = new InchSizes(built);
    this.runs = built.headerPieces();
    this.holeIn = bolt.diameterIn() + built.tables().factor("bolt-hole.over-most").amount();
    this.usual = pattern(built, joint.count());
    this.overJoint = pattern(built, 2 * IN_A_COLUMN);
  }

  private BoltPattern pattern(Built built, int count) {
    double edgeIn =
        built.tables().factor("bolt-geometry.edge.loaded.full").amount() * bolt.diameterIn();
    return BoltPattern.of(
        count,
        built.geometry().headers().depthIn(),
        built.geometry().posts().breadthIn(),
        edgeIn,
        built.tables().factor("bolt-rows.apart-longest").amount());
  }

  /** Without a length: that goes by what the bolt passes through. */
  String name() {
    return sizes.bolt(bolt.diameterIn());
  }

  double holeIn() {
    return holeIn;
  }

  /** Bolts of both rows. */
  int count() {
    int count = 0;
    for (HeaderPiece run : runs.pieces(false)) {
      for (int post = run.fromPost(); post <= run.toPost(); post++) {
        boolean again = run.cutFirst() && post == run.fromPost();
        count += again ? 0 : 2 * spots(post).size();
      }
    }
    return count;
  }

  /** Where boards meet over a post, each end has bolts of its own, so there are two columns. */
  List<Spot> spots(int post) {
    BoltPattern pattern = runs.cutOver(post) && usual.columns() == 1 ? overJoint : usual;
    List<Spot> spots = new ArrayList<>();
    for (int column = 0; column < pattern.columns(); column++) {
      double offIn = pattern.columns() == 1 ? 0 : (column - 0.5) * pattern.apartIn();
      for (int bolt = 0; bolt < IN_A_COLUMN; bolt++) {
        spots.add(new Spot(offIn, pattern.toEdgeIn() + bolt * pattern.spacingIn()));
      }
    }
    return spots;
  }
}
