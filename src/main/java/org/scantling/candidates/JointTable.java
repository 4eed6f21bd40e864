package org.scantling.candidates;

import java.util.Locale;
import org.scantling.confirm.JointFactors;
import org.scantling.confirm.JointFix;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;
import org.scantling.timber.Dowel;
import org.scantling.timber.PlacementRule;

/** The numbers of joints, out of the tables and into the words of the checks. */
final class JointTable {
  private static final String GEOMETRY = "bolt-geometry.";

  private final Tables tables;

  JointTable(Tables tables) {
    this.tables = tables;
  }

  /** One row of the joints table with its fastener. */
  JointFix fix(JointRow row) {
    JointFix.Rated rated =
        new JointFix.Rated(
            row.ratedLiftLb().orElse(0),
            row.ratedSideLb().orElse(0),
            row.ratedDownLb().orElse(0),
            row.ratedMomentInLb());
    JointFix.Way way = JointFix.Way.valueOf(row.way().replace('-', '_').toUpperCase(Locale.ROOT));
    if (way == JointFix.Way.RATED) {
      return new JointFix(way, row.count(), NO_DOWEL, new JointFix.Reach(0, 0, 0), rated);
    }
    FastenerRow fastener = tables.fastener(row.fastener());
    JointFix.Reach reach =
        new JointFix.Reach(fastener.lengthIn(), row.threadIn().orElse(0), row.tipIn().orElse(0));
    Dowel dowel =
        new Dowel(fastener.diameterIn(), fastener.rootDiameterIn(), fastener.bendingYieldPsi());
    return new JointFix(way, row.count(), dowel, reach, rated);
  }

  /** Stands where steel parts do the work. */
  private static final Dowel NO_DOWEL = Dowel.smooth(1, 1);

  JointFactors factors() {
    return new JointFactors(
        new JointFactors.Wet(
            factor("connection-wet.lateral.any-wet"),
            factor("connection-wet.withdrawal.screw.any-wet"),
            factor("connection-wet.withdrawal.nail.wet-dry")),
        new JointFactors.Pair(factor("end-grain.lateral"), factor("end-grain.lag-withdrawal")),
        new JointFactors.Pair(factor("toe-nail.lateral"), factor("toe-nail.withdrawal")),
        bolts(),
        depth("point-depth", "penetration.nail"),
        depth("thread-depth", "penetration.lag"));
  }

  private JointFactors.BoltPlaces bolts() {
    return new JointFactors.BoltPlaces(
        place("end-pulled", "end.tension"),
        place("end-pressed", "end.compression"),
        place("end-across", "end.perpendicular"),
        place("along-grain", "row.parallel"),
        place("across-grain", "row.perpendicular"),
        place("edge", "edge.parallel"),
        place("loaded-edge", "edge.loaded"),
        place("rows", "rows.perpendicular.long"),
        factor("bolt-rows.apart-longest"));
  }

  private PlacementRule place(String what, String id) {
    return depth(what, GEOMETRY + id);
  }

  private PlacementRule depth(String what, String id) {
    return new PlacementRule(what, factor(id + ".least"), factor(id + ".full"));
  }

  private double factor(String id) {
    return tables.factor(id).amount();
  }
}
