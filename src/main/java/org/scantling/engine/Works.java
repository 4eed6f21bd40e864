package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.scantling.confirm.FootingWork;
import org.scantling.design.Geometry;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.VerticalBearing;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;

/** The numbers that kernels and geometry work out for the rules of a phase to judge. */
final class Works {
  private static final Source GEOMETRY = new Source(SourceKind.CALCULATION, "geometry", false);

  private final Job job;
  private final Bench bench;
  private final Answers answers;

  Works(Job job, Bench bench) {
    this.job = job;
    this.bench = bench;
    this.answers = bench.answers();
  }

  List<Fact> facts(Phase phase) {
    return switch (phase) {
      case CLIMATE -> new ClimateWorks(job).facts();
      case LOADS -> new LoadWorks(job, answers, geometry()).facts();
      case CLEARANCE -> List.of(job.tables().vine(answers.option(VINE)));
      case RHYTHM -> rhythm();
      case CROSSBEAMS -> crossbeams();
      case HEADERS, SUPPORT, POSTS -> new ArrayList<>(job.tables().checks().rows());
      case HEIGHT -> height();
      case SIDES -> sides();
      case FOOTINGS -> footings();
      case JOINTS -> joints();
      case CAUTIONS -> cautions();
      default -> List.of();
    };
  }

  /** The walk divided by every number of bays, or a given design as it is divided. */
  List<Candidate.Parts> bayParts() {
    double provenIn = job.site().base().posts().bayIn();
    List<Candidate.Parts> parts = new ArrayList<>();
    for (int count : job.bayCounts()) {
      double bayIn = bayIn(count);
      parts.add(new Candidate.Parts(BAYS, Integer.toString(count), count, bayIn, bayIn / provenIn));
    }
    return parts;
  }

  /** Every number of equal spaces that could divide a bay, or the one that is given. */
  List<Candidate.Parts> spacingParts() {
    double bayIn = bayIn(Integer.parseInt(answers.option(BAYS)));
    double provenIn = job.base().geometry().crossbeamSpacingIn();
    List<Candidate.Parts> parts = new ArrayList<>();
    for (int count : spacings(bayIn)) {
      double spacingIn = bayIn / count;
      parts.add(
          new Candidate.Parts(
              CROSSBEAMS_PER_BAY, Integer.toString(count), count, spacingIn, spacingIn / provenIn));
    }
    return parts;
  }

  private List<Integer> spacings(double bayIn) {
    double leastIn = job.tables().thumb("crossbeam.spacing-least").amount();
    int most = Math.max(1, (int) Math.ceil(bayIn / leastIn));
    return job.fixed(CROSSBEAMS_PER_BAY, answers)
        .map(given -> List.of(Integer.parseInt(given.option())))
        .orElseGet(() -> IntStream.rangeClosed(1, most).boxed().toList());
  }

  /** A bay as given, else the walk divided evenly. */
  private double bayIn(int bays) {
    return job.fixed(BAY, answers)
        .map(Answer::number)
        .orElseGet(() -> job.site().walkway().lengthIn() / bays);
  }

  private List<Fact> rhythm() {
    List<Fact> facts = new ArrayList<>();
    Evidence divided =
        Evidence.saw("length", Measure.inches(job.site().walkway().lengthIn()))
            .and("bays", Measure.count(Integer.parseInt(answers.option(BAYS))));
    double evenIn = job.site().walkway().lengthIn() / Integer.parseInt(answers.option(BAYS));
    facts.add(geometry("bay.even", BAY, evenIn, divided));
    Geometry base = job.base().geometry();
    double spanIn = answers.number(ROW_SPACING);
    double wantedIn = base.crossbeams().overhangIn() * spanIn / base.plan().rowSpacingIn();
    facts.add(
        geometry(
            "crossbeam.overhang.proportion",
            CROSSBEAM_OVERHANG,
            wantedIn,
            Evidence.saw("proven", Measure.inches(base.crossbeams().overhangIn()))
                .and("provenSpan", Measure.inches(base.plan().rowSpacingIn()))
                .and("span", Measure.inches(spanIn))));
    StockOverhangs stock = new StockOverhangs(job, answers, geometry());
    stock.crossbeam(wantedIn).ifPresent(facts::add);
    stock.header().ifPresent(facts::add);
    return facts;
  }

  private List<Fact> crossbeams() {
    Geometry geometry = geometry();
    List<Fact> facts = new ArrayList<>(job.tables().checks().rows());
    facts.add(
        geometry(
            "crossbeam.spacing",
            CROSSBEAM_SPACING,
            geometry.crossbeamSpacingIn(),
            Evidence.saw("bay", Measure.inches(geometry.plan().bayIn()))
                .and("spaces", Measure.count(geometry.crossbeams().perBay()))));
    facts.add(
        geometry(
            "crossbeam.count",
            CROSSBEAM_COUNT,
            geometry.crossbeamCount(),
            Evidence.saw("bays", Measure.count(geometry.plan().bays()))
                .and("spaces", Measure.count(geometry.crossbeams().perBay()))
                .and("tails", Measure.count(2.0 * geometry.crossbeamsOnTail()))));
    return facts;
  }

  private List<Fact> height() {
    Geometry geometry = geometry();
    double stackIn = geometry.headroomIn() - geometry.posts().heightIn();
    double headroomIn = answers.number(HEADROOM);
    double fallIn = job.fallIn(answers);
    return List.of(
        geometry(
            "post.height.headroom",
            POST_HEIGHT,
            headroomIn - stackIn,
            Evidence.saw("headroom", Measure.inches(headroomIn))
                .and("stack", Measure.inches(stackIn))),
        geometry(
            "post.height.stepped",
            POST_HEIGHT,
            headroomIn - stackIn + fallIn,
            Evidence.saw("headroom", Measure.inches(headroomIn))
                .and("fall", Measure.inches(fallIn))),
        geometry(
            "post.height.stack",
            POST_HEIGHT,
            geometry.overallHeightIn() - geometry.posts().heightIn(),
            Evidence.none()));
  }

  private List<Fact> sides() {
    List<Fact> facts = new ArrayList<>(job.tables().checks().rows());
    facts.add(braceRoom());
    job.site()
        .base()
        .sidePanels()
        .ifPresent(
            panels -> {
              double gapIn = job.site().base().posts().bayIn() / (panels.pickets() + 1);
              double bayIn = answers.number(BAY);
              int count = (int) Math.max(0, Math.ceil(bayIn / gapIn - 1e-9) - 1);
              facts.add(
                  geometry(
                      "picket.count",
                      PICKETS,
                      count,
                      Evidence.saw("gap", Measure.inches(gapIn))
                          .and("bay", Measure.inches(bayIn))));
            });
    return facts;
  }

  /** The leg at which two braces meet, or one reaches the ground. */
  private Worked braceRoom() {
    Geometry geometry = geometry();
    double apartIn = Math.min(geometry.plan().bayIn(), geometry.plan().rowSpacingIn());
    double heightIn = geometry.headerTopIn() - geometry.headers().depthIn() / 2;
    return geometry(
        "brace.leg-room",
        BRACE_LEG,
        Math.min(apartIn / 2, heightIn),
        Evidence.saw("apart", Measure.inches(apartIn)).and("height", Measure.inches(heightIn)));
  }

  private List<Fact> footings() {
    FootingWork footing = bench.footing();
    double diameterIn = answers.find(HOLE_DIAMETER).map(each -> each.number()).orElse(leastHole());
    NonConstrainedEmbedment held = footing.embedment(diameterIn);
    VerticalBearing borne = footing.wideEnough(job.tables().thumb("footing.deepest").amount());
    double deepestIn = job.tables().thumb("footing.pressure-depth-most").amount();
    List<Fact> facts = new ArrayList<>();
    facts.add(
        worked(
            "footing.embedment",
            FOOTING_DEPTH,
            held.depthIn(),
            Evidence.saw("push", new Measure(held.load().forceLb(), Unit.POUND))
                .and("height", Measure.inches(held.load().heightIn()))
                .and("width", Measure.inches(held.width().widthIn()))
                .and("across", held.width().kind().word())
                .and("pressure", Measure.psf(held.s1Psf()))
                .and("increase", Measure.count(increase()))));
    facts.add(
        worked(
            "footing.bearing",
            HOLE_DIAMETER,
            borne.neededDiameterIn(),
            Evidence.saw("load", new Measure(borne.loadLb(), Unit.POUND))
                .and("allowed", Measure.psf(borne.allowablePsf()))));
    double liftIn = footing.upliftDepthIn(diameterIn, deepestIn);
    // Where no depth holds it down, the deepest that was tried is asked for, and a rule ends the
    // work there.
    facts.add(
        worked(
            "footing.uplift",
            FOOTING_DEPTH,
            Double.isFinite(liftIn) ? liftIn : deepestIn,
            Evidence.none()));
    if (bench.onBrackets()) {
      double slidIn = footing.slidingDepthIn(diameterIn, deepestIn);
      facts.add(worked("footing.sliding", FOOTING_DEPTH, slidIn, Evidence.none()));
    }
    return facts;
  }

  private List<Fact> cautions() {
    List<Fact> facts = new ArrayList<>(job.tables().wind().rows());
    facts.addAll(job.tables().cautions().rows());
    facts.add(new Parts(job, answers).heaviest());
    return facts;
  }

  private List<Fact> joints() {
    List<Fact> facts = new ArrayList<>(job.tables().joints().rows());
    facts.addAll(job.tables().checks().rows());
    facts.add(job.tables().stockLengths(job.stock().row(answers.option(HEADER_SIZE))));
    return facts;
  }

  private double increase() {
    return job.tables().thumb("footing.isolated-factor").amount();
  }

  private double leastHole() {
    double postIn = job.stock().row(answers.option(POST_SIZE)).thicknessIn();
    return postIn * job.tables().thumb("hole.width-in-posts").amount();
  }

  private Geometry geometry() {
    return bench.geometry();
  }

  /** What a check asks for; it bears the name of the check. */
  private Worked worked(String check, Question question, double number, Evidence evidence) {
    return new Worked(check, question, number, evidence, job.tables().check(check).source());
  }

  static Worked geometry(String id, Question question, double number, Evidence evidence) {
    return new Worked(id, question, number, evidence, GEOMETRY);
  }
}
