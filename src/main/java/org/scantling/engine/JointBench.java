package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.List;
import java.util.Optional;
import org.scantling.confirm.JointBoltChecks;
import org.scantling.confirm.JointBraceChecks;
import org.scantling.confirm.JointCrossing;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointForces;
import org.scantling.confirm.JointRules;
import org.scantling.confirm.JointSeatChecks;
import org.scantling.confirm.Material;
import org.scantling.design.Structure;
import org.scantling.reasons.Checked;
import org.scantling.tables.JointRow;

/** Works the checks of one way of holding a joint together, with everything else as answered. */
final class JointBench {
  private final Bench bench;
  private final JointTable table;

  JointBench(Bench bench) {
    this.bench = bench;
    this.table = new JointTable(bench.tables());
  }

  /** The checks of one row of the joints table; none where nothing needs to be worked out. */
  List<Checked> checks(JointRow row) {
    return switch (row.question()) {
      case CROSSBEAM_JOINT ->
          JointSeatChecks.ofCrossbeam(
                  forces(), bench.timber(CROSSBEAM_SIZE), bench.timber(HEADER_SIZE), rules())
              .crossbeam(table.fix(row));
      case HEADER_JOINT -> header(table.fix(row));
      case BRACE_JOINT -> brace(table.fix(row));
      default -> List.of();
    };
  }

  /** Where the bolts sit, where a row of the joints table bolts paired headers. */
  Optional<Structure.Bolts> bolts(JointRow row) {
    JointFix fix = table.fix(row);
    return paired() && fix.way() == JointFix.Way.BOLTED
        ? Optional.of(bolted().places(fix))
        : Optional.empty();
  }

  private List<Checked> header(JointFix fix) {
    Material header = bench.timber(HEADER_SIZE);
    return paired()
        ? bolted().of(fix)
        : JointSeatChecks.ofHeader(forces(), header, bench.timber(POST_SIZE), rules()).header(fix);
  }

  private boolean paired() {
    return bench.geometry().headers().paired();
  }

  private JointBoltChecks bolted() {
    JointCrossing crossing =
        new JointCrossing(
            bench.timber(POST_SIZE), bench.timber(HEADER_SIZE), bench.geometry().headerTailIn());
    return new JointBoltChecks(crossing, forces(), rules());
  }

  private List<Checked> brace(JointFix fix) {
    return bench
        .braced()
        .map(walk -> new JointBraceChecks(walk, rules()).of(fix))
        .orElse(List.of());
  }

  private JointForces forces() {
    JointForces forces =
        new JointForces(
            bench.headers(),
            bench.timber(HEADER_SIZE),
            bench.standing(),
            bench.wind().onCrossbeamLb());
    return bench.braced().map(forces::in).orElse(forces);
  }

  private JointRules rules() {
    return new JointRules(table.factors(), bench.limits(), bench.sources());
  }
}
