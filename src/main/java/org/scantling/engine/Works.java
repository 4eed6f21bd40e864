package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;
import org.scantling.tables.SizeRow;

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
      case FOOTINGS -> new FootingWorks(job, bench).facts();
      case JOINTS -> joints();
      case CAUTIONS -> cautions();
      default -> List.of();
    };
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
    facts.add(depthToThickness());
    return facts;
  }

  /** By the nominal size, as the standard counts it. */
  private Worked depthToThickness() {
    SizeRow size = job.stock().row(answers.option(CROSSBEAM_SIZE));
    double ratio = size.nominalWidthIn() / size.nominalThicknessIn();
    Evidence evidence =
        Evidence.saw("size", size.id())
            .and("ratio", Measure.count(ratio))
            .and(
                "most", Measure.count(job.tables().thumb("crossbeam.edge-support-ratio").amount()));
    return geometry("crossbeam.depth-to-thickness", CROSSBEAM_BLOCKING, ratio, evidence);
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
            hanging(stackIn, Evidence.saw("headroom", Measure.inches(headroomIn)))
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

  /** Headers beside the posts hang down from their tops, and it is under them that one walks. */
  private static Evidence hanging(double stackIn, Evidence evidence) {
    return stackIn < 0 ? evidence.and("hang", Measure.inches(-stackIn)) : evidence;
  }

  private List<Fact> sides() {
    List<Fact> facts = new ArrayList<>(job.tables().checks().rows());
    facts.add(new BraceRoom(bench).leg());
    if (job.railed()) {
      facts.add(railRoom());
    }
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

  /** The height at which a rail leaves just so much free below the header, on the lower side. */
  private Worked railRoom() {
    Geometry geometry = geometry();
    double underIn =
        geometry.headers().paired()
            ? geometry.posts().heightIn() - geometry.headers().depthIn()
            : geometry.posts().heightIn();
    double freeIn = job.tables().thumb("rail.room-least").amount();
    double railIn = job.stock().row(answers.option(RAIL_SIZE)).widthIn();
    double roomIn = underIn - freeIn - railIn / 2 - job.fallIn(answers);
    return geometry(
        "rail.height-room",
        RAIL_HEIGHT,
        Math.max(0, roomIn),
        Evidence.saw("free", Measure.inches(freeIn))
            .and("under", Measure.inches(underIn))
            .and("rail", Measure.inches(railIn)));
  }

  private List<Fact> cautions() {
    List<Fact> facts = new ArrayList<>(job.tables().wind().rows());
    facts.addAll(job.tables().cautions().rows());
    facts.add(job.tables().vine(answers.option(VINE)));
    facts.add(new Parts(job, answers).heaviest());
    facts.add(job.tables().live("live.roof"));
    LoadWorks loads = new LoadWorks(job, answers, geometry());
    loads.hillWind().ifPresent(facts::add);
    HillName.of(job.site().title(), job.tables()).ifPresent(facts::add);
    new SoilDoubling(job, bench).fact().ifPresent(facts::add);
    facts.add(job.tables().check("crossbeam.tipping"));
    facts.add(ladder());
    return facts;
  }

  private Worked ladder() {
    JointBench joints = new JointBench(bench);
    Check check = joints.underLadder(job.tables().joints().row(answers.option(CROSSBEAM_JOINT)));
    double personLb = job.tables().live("live.person").amount();
    double leanShare = job.tables().thumb("ladder.lean-share").amount();
    return geometry(
        "crossbeam.ladder",
        CROSSBEAM_JOINT,
        check.ratio(),
        Evidence.saw("person", new Measure(personLb, Unit.POUND))
            .and("push", new Measure(personLb * leanShare, Unit.POUND))
            .and("share", new Measure(PERCENT * check.ratio(), Unit.PERCENT)));
  }

  private static final int PERCENT = 100;

  private List<Fact> joints() {
    List<Fact> facts = new ArrayList<>(job.tables().joints().rows());
    facts.addAll(job.tables().checks().rows());
    facts.add(
        job.tables()
            .stockLengths(job.stock().row(answers.option(HEADER_SIZE)))
            .selling(HeaderCuts.of(bench).soldIn()));
    return facts;
  }

  private Geometry geometry() {
    return bench.geometry();
  }

  static Worked geometry(String id, Question question, double number, Evidence evidence) {
    return new Worked(id, question, number, evidence, GEOMETRY);
  }
}
