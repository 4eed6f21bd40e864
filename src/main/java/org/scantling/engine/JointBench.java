package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.confirm.JointBaseChecks;
import org.scantling.confirm.JointBoltChecks;
import org.scantling.confirm.JointBraceChecks;
import org.scantling.confirm.JointCrossing;
import org.scantling.confirm.JointFix;
import org.scantling.confirm.JointForces;
import org.scantling.confirm.JointRailChecks;
import org.scantling.confirm.JointRules;
import org.scantling.confirm.JointSeatChecks;
import org.scantling.confirm.JointStepChecks;
import org.scantling.confirm.Material;
import org.scantling.confirm.PostInGround;
import org.scantling.confirm.TopLoads;
import org.scantling.design.Structure;
import org.scantling.meanwhile.Once;
import org.scantling.quantity.Check;
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
    this.rules = new Once<>(() -> rules(bench));
  }

  /** What every joint check needs. */
  static JointRules rules(Bench bench) {
    return new JointRules(
        new JointTable(bench.tables()).factors(), bench.limits(), bench.sources());
  }

  /** The checks of one row of the joints table; none where nothing needs to be worked out. */
  List<Checked> checks(JointRow row) {
    return switch (row.question()) {
      case CROSSBEAM_JOINT, HEADER_JOINT, BRACE_JOINT, HEADER_STEP ->
          BraceBench.stands(bench)
              ? bench.ledger().framed(given(row), () -> worked(row))
              : bench.ledger().checks(given(row), () -> worked(row));
      case RAIL_JOINT -> rail(row);
      case BASE_JOINT -> base(row);
      default -> List.of();
    };
  }

  /**
   * Whether crossbeams stand upright with blocks or without, then by whatever fastening holds best.
   */
  List<Checked> blocking(String way) {
    return RollBench.of(bench.with(CROSSBEAM_BLOCKING, way), way, rules);
  }

  /** A ladder against a crossbeam that is held so. */
  Check underLadder(JointRow row) {
    return new RollBench(bench, rules.get()).underLadder(row);
  }

  private List<Checked> rail(JointRow row) {
    JointRailChecks.Rail rail =
        new JointRailChecks.Rail(
            bench.timber(RAIL_SIZE), bench.timber(POST_SIZE), bench.answers().number(RAIL_NOTCH));
    double bayIn = bench.geometry().plan().bayIn();
    double halfSideIn2 = bayIn * bench.geometry().posts().heightIn() / 2;
    JointRailChecks.Loads loads =
        new JointRailChecks.Loads(
            bench.wind().onRailLb(),
            TopLoads.lbPerIn(bench.topLoads().vinePsf(), halfSideIn2),
            bench.topLoads().personLb(),
            bayIn);
    return bench
        .ledger()
        .checks(
            List.of(row, rail, loads),
            () -> new JointRailChecks(rail, loads, rules.get()).of(table.fix(row)));
  }

  /**
   * The base of a post, and the post on it. Like a post, a base may be given a deeper hole before a
   * stiffer one is taken.
   */
  private List<Checked> base(JointRow row) {
    PostInGround ground = bench.pierGround();
    List<Object> given = new ArrayList<>(given(row));
    given.add(bench.foot());
    given.add(ground.dugIn());
    given.add(bench.stepOffIn());
    return bench
        .ledger()
        .checks(
            given,
            () ->
                new JointBaseChecks(
                        bench.posts().onBase(row.turningInLb()).heldBy(ground),
                        bench.timber(POST_SIZE),
                        rules.get())
                    .of(table.fix(row).rated()));
  }

  /** All that a joint depends on; the headers and the braced frames follow from it. */
  private List<Object> given(JointRow row) {
    return List.of(
        row,
        bench.geometry(),
        bench.stretchRatio(),
        bench.splice(),
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
      case HEADER_STEP -> new JointStepChecks(forces.get(), rules.get()).of(fix);
      default -> brace(fix);
    };
  }

  /** Where the bolts sit, where a row of the joints table bolts paired headers. */
  Optional<Structure.Bolts> bolts(JointRow row) {
    JointFix fix = table.fix(row);
    return paired() && fix.way() == JointFix.Way.BOLTED
        ? Optional.of(bolted().places(fix))
        : Optional.empty();
  }

  private List<Checked> crossbeam(JointFix fix) {
    List<Checked> checks =
        new ArrayList<>(
            JointSeatChecks.ofCrossbeam(
                    forces.get(),
                    bench.timber(CROSSBEAM_SIZE),
                    bench.timber(HEADER_SIZE),
                    rules.get())
                .crossbeam(fix));
    checks.add(new RollBench(bench, rules.get()).inWind(fix));
    return checks;
  }

  private List<Checked> header(JointFix fix) {
    Material header = bench.timber(HEADER_SIZE);
    return paired()
        ? bolted().of(fix)
        : JointSeatChecks.ofHeader(
                forces.get(), header, bench.timber(POST_SIZE), toCutIn(), rules.get())
            .header(fix);
  }

  /** The lag screws of a piece stand in the middle of what it has of the post: half, or all. */
  private double toCutIn() {
    double postIn = bench.geometry().posts().breadthIn() * bench.stretchRatio();
    return bench.stepped() ? postIn / 2 : postIn / 2 / 2;
  }

  private boolean paired() {
    return bench.geometry().headers().paired();
  }

  private JointBoltChecks bolted() {
    JointCrossing crossing =
        new JointCrossing(
            bench.timber(POST_SIZE),
            bench.timber(HEADER_SIZE),
            bench.geometry().headerTailIn(),
            bench.stretchRatio());
    return new JointBoltChecks(crossing, forces.get(), rules.get());
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
                bench.wind().onCrossbeamLb())
            .hung(bench.wind().hungOnHeaderLb());
    return bench.braced().map(plain::in).orElse(plain);
  }
}
