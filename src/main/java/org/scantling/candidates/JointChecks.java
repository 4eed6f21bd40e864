package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.concurrent.Lazy;
import org.scantling.confirm.JointBaseChecks;
import org.scantling.confirm.JointBoltChecks;
import org.scantling.confirm.JointBraceChecks;
import org.scantling.confirm.JointCase;
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
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.tables.JointRow;

/** Works the checks of one way of holding a joint together, with everything else as answered. */
public final class JointChecks {
  private final CheckContext context;
  private final JointTable table;
  private final Lazy<JointForces> forces = new Lazy<>(this::held);
  private final Lazy<JointRules> rules;

  public JointChecks(CheckContext context) {
    this.context = context;
    this.table = new JointTable(context.tables());
    this.rules = new Lazy<>(() -> rules(context));
  }

  /** What every joint check needs. */
  static JointRules rules(CheckContext context) {
    return new JointRules(
        new JointTable(context.tables()).factors(), context.limits(), context.sources());
  }

  /** The checks of one row of the joints table; none where nothing needs to be worked out. */
  public List<Checked> checks(JointRow row) {
    return switch (row.question()) {
      case CROSSBEAM_JOINT, HEADER_JOINT, BRACE_JOINT, HEADER_STEP ->
          BracketChecks.stands(context)
              ? context.cache().framed(given(row), () -> worked(row))
              : context.cache().checks(given(row), () -> worked(row));
      case RAIL_JOINT -> rail(row);
      case BASE_JOINT -> base(row);
      default -> List.of();
    };
  }

  /** The forces of a row that are worked by fasteners, one by one. */
  public Stream<JointCase> cases(JointRow row) {
    JointFix fix = table.fix(row);
    return switch (row.question()) {
      case CROSSBEAM_JOINT ->
          Stream.concat(
              crossbeamSeat().casesOfCrossbeam(fix),
              Stream.of(new RollChecks(context, rules.get()).caseInWind(fix)));
      case HEADER_JOINT -> paired() ? bolted().cases(fix) : headerSeat().casesOfHeader(fix);
      case RAIL_JOINT -> railEnd().cases(fix);
      case BRACE_JOINT ->
          context.braced().stream()
              .flatMap(walk -> new JointBraceChecks(walk, rules.get()).cases(fix));
      default -> Stream.empty();
    };
  }

  /**
   * Whether crossbeams stand upright with blocks or without, then by whatever fastening holds best.
   */
  public List<Checked> blocking(String way) {
    return RollChecks.of(context.with(CROSSBEAM_BLOCKING, way), way, rules);
  }

  /** A ladder against a crossbeam that is held so. */
  public Check underLadder(JointRow row) {
    return new RollChecks(context, rules.get()).underLadder(row);
  }

  private List<Checked> rail(JointRow row) {
    return context
        .cache()
        .checks(List.of(row, rail(), railLoads()), () -> railEnd().of(table.fix(row)));
  }

  private JointRailChecks railEnd() {
    return new JointRailChecks(rail(), railLoads(), rules.get());
  }

  private JointRailChecks.Rail rail() {
    return new JointRailChecks.Rail(
        context.timber(RAIL_SIZE), context.timber(POST_SIZE), context.answers().number(RAIL_NOTCH));
  }

  private JointRailChecks.Loads railLoads() {
    double bayIn = context.geometry().plan().bayIn();
    double halfSideIn2 = bayIn * context.geometry().posts().heightIn() / 2;
    return new JointRailChecks.Loads(
        context.wind().onRailLb(),
        TopLoads.lbPerIn(context.topLoads().vinePsf(), halfSideIn2),
        context.topLoads().personLb(),
        bayIn);
  }

  /**
   * The base of a post, and the post on it. Like a post, a base may be given a deeper hole before a
   * stiffer one is taken.
   */
  private List<Checked> base(JointRow row) {
    PostInGround ground = context.pierGround();
    List<Object> given = new ArrayList<>(given(row));
    given.add(context.foot());
    given.add(ground.dugIn());
    given.add(context.stepOffIn());
    return context
        .cache()
        .checks(
            given,
            () ->
                new JointBaseChecks(
                        context.posts().onBase(row.turningInLb()).heldBy(ground),
                        context.timber(POST_SIZE),
                        rules.get())
                    .of(table.fix(row).rated()));
  }

  /** All that a joint depends on; the headers and the braced frames follow from it. */
  private List<Object> given(JointRow row) {
    return List.of(
        row,
        context.geometry(),
        context.stretchRatio(),
        context.stepped(),
        context.splice(),
        context.topLoads(),
        context.standing(),
        context.wind().onCrossbeamLb(),
        context.wind().hungOnHeaderLb(),
        context.timber(CROSSBEAM_SIZE),
        context.timber(HEADER_SIZE),
        context.timber(POST_SIZE),
        BracketChecks.timbers(context));
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
  public Optional<Structure.Bolts> bolts(JointRow row) {
    JointFix fix = table.fix(row);
    return paired() && fix.way() == JointFix.Way.BOLTED
        ? Optional.of(bolted().places(fix))
        : Optional.empty();
  }

  private List<Checked> crossbeam(JointFix fix) {
    List<Checked> checks = new ArrayList<>(crossbeamSeat().crossbeam(fix));
    checks.add(new RollChecks(context, rules.get()).inWind(fix));
    return checks;
  }

  private JointSeatChecks crossbeamSeat() {
    return JointSeatChecks.ofCrossbeam(
        forces.get(), context.timber(CROSSBEAM_SIZE), context.timber(HEADER_SIZE), rules.get());
  }

  private List<Checked> header(JointFix fix) {
    return paired() ? bolted().of(fix) : headerSeat().header(fix);
  }

  private JointSeatChecks headerSeat() {
    Material header = context.timber(HEADER_SIZE);
    return JointSeatChecks.ofHeader(
        forces.get(), header, context.timber(POST_SIZE), toCutIn(), rules.get());
  }

  /** The lag screws of a piece stand in the middle of what it has of the post: half, or all. */
  private double toCutIn() {
    double postIn = context.geometry().posts().breadthIn() * context.stretchRatio();
    return context.stepped() ? postIn / 2 : postIn / 2 / 2;
  }

  private boolean paired() {
    return context.geometry().headers().paired();
  }

  private JointBoltChecks bolted() {
    JointCrossing crossing =
        new JointCrossing(
            context.timber(POST_SIZE),
            context.timber(HEADER_SIZE),
            context.geometry().headerTailIn(),
            context.stretchRatio());
    return new JointBoltChecks(crossing, forces.get(), rules.get());
  }

  private List<Checked> brace(JointFix fix) {
    return context
        .braced()
        .map(walk -> new JointBraceChecks(walk, rules.get()).of(fix))
        .orElse(List.of());
  }

  private JointForces held() {
    JointForces plain =
        new JointForces(
                context.headers(),
                context.timber(HEADER_SIZE),
                context.standing(),
                context.wind().onCrossbeamLb())
            .hung(context.wind().hungOnHeaderLb());
    return context.braced().map(plain::in).orElse(plain);
  }
}
