package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.HeaderCuts;
import org.scantling.candidates.JointChecks;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Worked;
import org.scantling.tables.SizeRow;

/** The numbers that kernels and geometry work out for the rules of a phase to judge. */
public final class DerivedQuantities {

  private final DesignProblem problem;
  private final CheckContext context;
  private final Answers answers;

  public DerivedQuantities(DesignProblem problem, CheckContext context) {
    this.problem = problem;
    this.context = context;
    this.answers = context.answers();
  }

  public List<Fact> facts(Phase phase) {
    return switch (phase) {
      case CLIMATE -> new DerivedClimate(problem).facts();
      case LOADS -> new DerivedLoads(problem, answers, geometry()).facts();
      case LAYOUT -> layout();
      case CLEARANCE -> List.of(problem.tables().vine(answers.option(VINE)));
      case RHYTHM -> rhythm();
      case CROSSBEAMS -> crossbeams();
      case HEADERS, POSTS -> new ArrayList<>(problem.tables().checks().rows());
      case SUPPORT -> support();
      case HEIGHT -> new DerivedHeight(problem, answers, geometry()).facts();
      case SIDES -> new DerivedSides(problem, context).facts();
      case FOOTINGS -> new DerivedFooting(problem, context).facts();
      case JOINTS -> joints();
      case CAUTIONS -> cautions();
      default -> List.of();
    };
  }

  private List<Fact> layout() {
    List<Fact> facts = new ArrayList<>(new FreeStretches(problem).ends());
    new Rhythm(problem, answers).grown().ifPresent(facts::add);
    return facts;
  }

  private List<Fact> rhythm() {
    List<Fact> facts = new ArrayList<>();
    Bays bays = bays();
    facts.add(bay(bays));
    facts.add(
        ByGeometry.worked(
            "bay.end",
            BAY,
            Math.min(bays.lengthIn(0), bays.lengthIn(bays.count() - 1)),
            Evidence.none()));
    Geometry base = problem.base().geometry();
    double spanIn = answers.number(ROW_SPACING);
    double wantedIn = base.crossbeams().overhangIn() * spanIn / base.plan().rowSpacingIn();
    facts.add(
        ByGeometry.worked(
            "crossbeam.overhang.proportion",
            CROSSBEAM_OVERHANG,
            wantedIn,
            Evidence.saw("proven", Measure.inches(base.crossbeams().overhangIn()))
                .and("provenSpan", Measure.inches(base.plan().rowSpacingIn()))
                .and("span", Measure.inches(spanIn))));
    StockOverhangs stock = new StockOverhangs(problem, answers, geometry());
    stock.crossbeam(wantedIn).ifPresent(facts::add);
    facts.addAll(stock.header());
    return facts;
  }

  private Bays bays() {
    return problem.site().walkway().into(Integer.parseInt(answers.option(BAYS)));
  }

  private Fact bay(Bays bays) {
    if (!bays.even() && problem.site().walkway().divided().isEmpty()) {
      return new FreeStretches(problem).moved(bays);
    }
    Evidence divided =
        Evidence.saw("length", Measure.inches(problem.site().walkway().lengthIn()))
            .and("bays", Measure.count(bays.count()));
    return bays.even()
        ? ByGeometry.worked("bay.even", BAY, bays.longestIn(), divided)
        : ByGeometry.worked(
            "bay.longest",
            BAY,
            bays.longestIn(),
            divided.and("shortest", Measure.inches(bays.shortestIn())));
  }

  private List<Fact> crossbeams() {
    Geometry geometry = geometry();
    List<Fact> facts = new ArrayList<>(problem.tables().checks().rows());
    facts.add(
        ByGeometry.worked(
            "crossbeam.spacing",
            CROSSBEAM_SPACING,
            geometry.crossbeamSpacingIn(),
            Evidence.saw("bay", Measure.inches(geometry.plan().bayIn()))
                .and("spaces", Measure.count(geometry.crossbeams().perBay()))));
    facts.add(
        ByGeometry.worked(
            "crossbeam.count",
            CROSSBEAM_COUNT,
            geometry.crossbeamCount(),
            spaces(geometry).and("tails", Measure.count(2.0 * geometry.crossbeamsOnTail()))));
    facts.add(depthToThickness());
    return facts;
  }

  /** So many of each bay, or all of them together where bays are not alike. */
  private static Evidence spaces(Geometry geometry) {
    Bays bays = geometry.plan().along();
    int perBay = geometry.crossbeams().perBay();
    return bays.even()
        ? Evidence.saw("bays", Measure.count(bays.count())).and("spaces", Measure.count(perBay))
        : Evidence.saw("all", Measure.count(bays.spaces(perBay)));
  }

  /** By the nominal size, as the standard counts it. */
  private Worked depthToThickness() {
    SizeRow size = problem.stock().row(answers.option(CROSSBEAM_SIZE));
    double ratio = size.nominalWidthIn() / size.nominalThicknessIn();
    Evidence evidence =
        Evidence.saw("size", size.id())
            .and("ratio", Measure.count(ratio))
            .and(
                "most",
                Measure.count(problem.tables().thumb("crossbeam.edge-support-ratio").amount()));
    return ByGeometry.worked("crossbeam.depth-to-thickness", CROSSBEAM_BLOCKING, ratio, evidence);
  }

  private List<Fact> support() {
    List<Fact> facts = new ArrayList<>(problem.tables().checks().rows());
    fallAcross().ifPresent(facts::add);
    facts.addAll(new RockBelow(problem, context).standing());
    return facts;
  }

  /** How much lower one row stands than the other, as a share of their distance. */
  private Optional<Fact> fallAcross() {
    double dropIn = problem.dropIn(answers);
    double percent = PERCENT * dropIn / answers.number(ROW_SPACING);
    Evidence evidence =
        Evidence.saw("drop", Measure.inches(dropIn))
            .and("share", new Measure(percent, Unit.PERCENT));
    return dropIn > 0
        ? Optional.of(ByGeometry.worked("row.share", FOOTING_KIND, percent, evidence))
        : Optional.empty();
  }

  private List<Fact> cautions() {
    List<Fact> facts = new ArrayList<>(problem.tables().wind().rows());
    facts.addAll(problem.tables().cautions().rows());
    facts.add(problem.tables().vine(answers.option(VINE)));
    facts.add(new Parts(problem, answers).heaviest());
    facts.add(problem.tables().live("live.roof"));
    DerivedLoads loads = new DerivedLoads(problem, answers, geometry());
    loads.hillWind().ifPresent(facts::add);
    HillName.of(problem.site().title(), problem.tables()).ifPresent(facts::add);
    new SoilDoubling(problem, context).fact().ifPresent(facts::add);
    facts.add(problem.tables().check("crossbeam.tipping"));
    facts.addAll(problem.tables().loosened());
    facts.addAll(problem.tables().authority().rows());
    facts.add(topHeight());
    facts.addAll(new MeasuredPlace(problem).facts());
    facts.add(ladder());
    fallAcross().ifPresent(facts::add);
    new RockBelow(problem, context).told().ifPresent(facts::add);
    facts.addAll(new FreeStretches(problem).notFree(geometry().plan().along(), answers));
    return facts;
  }

  private Worked topHeight() {
    double highIn = geometry().overallHeightIn();
    return ByGeometry.worked(
        "top.height", POST_HEIGHT, highIn, Evidence.saw("high", Measure.inches(highIn)));
  }

  private Worked ladder() {
    JointChecks joints = new JointChecks(context);
    Check check =
        joints.underLadder(problem.tables().joints().row(answers.option(CROSSBEAM_JOINT)));
    double personLb = problem.tables().live("live.person").amount();
    double leanShare = problem.tables().thumb("ladder.lean-share").amount();
    return ByGeometry.worked(
        "crossbeam.ladder",
        CROSSBEAM_JOINT,
        check.ratio(),
        Evidence.saw("person", new Measure(personLb, Unit.POUND))
            .and("push", new Measure(personLb * leanShare, Unit.POUND))
            .and("share", new Measure(PERCENT * check.ratio(), Unit.PERCENT)));
  }

  private static final int PERCENT = 100;

  private List<Fact> joints() {
    List<Fact> facts = new ArrayList<>(problem.tables().joints().rows());
    facts.addAll(problem.tables().checks().rows());
    facts.add(
        problem
            .tables()
            .stockLengths(problem.stock().row(answers.option(HEADER_SIZE)))
            .selling(HeaderCuts.of(context).soldIn()));
    return facts;
  }

  private Geometry geometry() {
    return context.geometry();
  }
}
