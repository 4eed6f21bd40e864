package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.List;
import org.scantling.confirm.JointBoltChecks;
import org.scantling.confirm.JointBraceChecks;
import org.scantling.confirm.JointCrossing;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointForces;
import org.scantling.confirm.JointRules;
import org.scantling.confirm.JointSeatChecks;
import org.scantling.confirm.Material;
import org.scantling.design.Geometry;
import org.scantling.reasons.Checked;
import org.scantling.tables.JointRow;

/** Works the checks of one way of holding a joint together, with everything else as answered. */
final class JointBench {
  private final Bench bench;
  private final JointTable table;
  private final Once<JointForces> forces = new Once<>(this::held);
  private final Once<JointRules> rules;

  JointBench(Bench bench) {
    this.bench = bench;
    this.table = new JointTable(bench.tables());
    this.rules = new Once<>(() -> new JointRules(table.factors(), bench.limits(), bench.sources()));
  }

  /** The checks of one row of the joints table; none where nothing needs to be worked out. */
  List<Checked> checks(JointRow row) {
    return switch (row.question()) {
      case CROSSBEAM_JOINT, HEADER_JOINT, BRACE_JOINT ->
          bench.ledger().checks(given(row), () -> worked(row));
      default -> List.of();
    };
  }

  /** All that a joint depends on; the headers and the braced frames follow from it. */
  private List<Object> given(JointRow row) {
    return List.of(
        row,
        bench.geometry(),
        bench.topLoads(),
        bench.standing(),
        bench.wind().onCrossbeamLb(),
        bench.timber(CROSSBEAM_SIZE),
        bench.timber(HEADER_SIZE),
        bench.timber(POST_SIZE),
        BraceBench.timbers(bench));
  }

  private List<Checked> worked(JointRow row) {
    JointFix fix = table.fix(row);
    return switch (row.question()) {
      case CROSSBEAM_JOINT -> crossbeam(fix);
      case HEADER_JOINT -> header(fix);
      default -> brace(fix);
    };
  }

  private List<Checked> crossbeam(JointFix fix) {
    return JointSeatChecks.ofCrossbeam(
            forces.get(), bench.timber(CROSSBEAM_SIZE), bench.timber(HEADER_SIZE), rules.get())
        .crossbeam(fix);
  }

  private List<Checked> header(JointFix fix) {
    Material header = bench.timber(HEADER_SIZE);
    Material post = bench.timber(POST_SIZE);
    Geometry geometry = bench.geometry();
    if (!geometry.headers().paired()) {
      return JointSeatChecks.ofHeader(forces.get(), header, post, rules.get()).header(fix);
    }
    JointCrossing crossing = new JointCrossing(post, header, geometry.headerTailIn());
    return new JointBoltChecks(crossing, forces.get(), rules.get()).of(fix);
  }

  private List<Checked> brace(JointFix fix) {
    return bench
        .braced()
        .map(walk -> new JointBraceChecks(walk, rules.get()).of(fix))
        .orElse(List.of());
  }

  private JointForces held() {
    JointForces plain =
        new JointForces(
            bench.headers(),
            bench.timber(HEADER_SIZE),
            bench.standing(),
            bench.wind().onCrossbeamLb());
    return bench.braced().map(plain::in).orElse(plain);
  }
}
