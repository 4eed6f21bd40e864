package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.answers.Answers;
import org.scantling.answers.Stock;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.Grading;
import org.scantling.candidates.JointChecks;
import org.scantling.candidates.TopLines;
import org.scantling.design.CutHeaders;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderBearing;
import org.scantling.design.HeaderPiece;
import org.scantling.design.KneeBraces;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.loads.MemberWeight;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.BayTrial;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;
import org.scantling.tables.FreshWeight;
import org.scantling.tables.SizeRow;
import org.scantling.tables.TopSpare;

/** Every kind of member of the finished answers, with its length, count and notches. */
public final class Parts {
  private static final double LAST_BITS = 1e-6;

  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;
  private final TopLine top;
  private final CutHeaders cutHeaders;

  public Parts(DesignProblem problem, Answers answers) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = problem.context(answers).geometry();
    this.top = TopLines.of(problem.context(answers));
    this.cutHeaders = new CutHeaders(top, problem.context(answers).splice());
  }

  /** What the whole comes to: its timber and how many sizes differ from the base. */
  public BayTrial trial() {
    double timberIn3 = 0;
    for (Member member : all()) {
      timberIn3 += member.breadthIn() * member.depthIn() * member.lengthIn() * member.count();
    }
    int newSizes = 0;
    for (Proven proven : problem.base().facts()) {
      boolean size = proven.question().attribute().equals("size");
      if (size && !proven.option().equals(answers.option(proven.question()))) {
        newSizes++;
      }
    }
    return new BayTrial(answers.option(BAYS), timberIn3, newSizes);
  }

  /** The piece that weighs most, wet, for whoever has to lift it. */
  Worked heaviest() {
    Optional<Worked> heaviest = Optional.empty();
    for (Member member : all()) {
      double unitWeightPcf =
          problem
              .stock()
              .material(member.size(), member.species(), member.grade())
              .orElseThrow()
              .unitWeightPcf();
      double weightLb =
          MemberWeight.of(
                  member.breadthIn(),
                  member.depthIn(),
                  FreshWeight.pcf(problem.tables(), unitWeightPcf))
              .weightLb(pieceIn(member));
      if (heaviest.isEmpty() || weightLb > heaviest.get().number()) {
        heaviest = Optional.of(piece(member, weightLb));
      }
    }
    return heaviest.orElseThrow();
  }

  /** A post is lifted before its top is trimmed. */
  private double pieceIn(Member member) {
    return switch (member.role()) {
      case "post" -> {
        yield new TopSpare(shopIn("setout.post-spare"), shopIn("setout.post-spare-least"))
            .cutIn(member.lengthIn(), problem.context(answers).soldIn(POST_SIZE));
      }
      default -> member.lengthIn();
    };
  }

  /** As the cut list has it: what was chosen for being handy is round on a metric tape. */
  private double shopIn(String row) {
    double inches = problem.tables().shop(row).amount();
    return problem.metric() ? Length.handyMetric(inches) : inches;
  }

  private static Worked piece(Member member, double weightLb) {
    return new Worked(
        "piece.heaviest",
        BAYS,
        weightLb,
        Evidence.saw("piece", member.role() + " " + member.size())
            .and("weight", new Measure(weightLb, Unit.POUND_WEIGHT)),
        new Source(SourceKind.CALCULATION, "dressed size and weight fresh from the yard", false));
  }

  public Structure structure() {
    return new Structure(geometry, top, cutHeaders, all(), footings(), bolts(), braces());
  }

  private List<Member> all() {
    List<Member> members = new ArrayList<>();
    members.addAll(posts());
    members.addAll(headers());
    members.addAll(crossbeams());
    if (geometry.crossbeams().blocked()) {
      members.addAll(blocking());
    }
    if (answers.has(RAIL_SIZE)) {
      members.addAll(rails());
    }
    if (braced()) {
      braces().ifPresent(each -> members.addAll(braces(each)));
    }
    return members;
  }

  private Optional<Structure.Bolts> bolts() {
    CheckContext context = problem.context(answers);
    return answers
        .find(HEADER_JOINT)
        .map(answer -> problem.tables().joints().row(answer.option()))
        .flatMap(row -> new JointChecks(context).bolts(row));
  }

  private Structure.Footings footings() {
    return new Structure.Footings(
        answers.option(FOOTING_KIND),
        answers.number(FOOTING_DEPTH),
        answers.number(HOLE_DIAMETER),
        geometry.postCount(),
        answers.option(FOOTING_BACKFILL));
  }

  /** Those of one length together, from foot to top as they stand. */
  private List<Member> posts() {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    for (int post = 0; post < top.posts(); post++) {
      counts.merge(told(top.postLengthIn(post)), 2, Integer::sum);
    }
    List<Notch> housings = new ArrayList<>();
    if (answers.has(RAIL_SIZE)) {
      double railIn = problem.stock().row(answers.option(RAIL_SIZE)).widthIn();
      housings.add(
          new Notch(
              "inner",
              top.belowGroundIn(0) + answers.number(RAIL_HEIGHT),
              railIn,
              answers.number(RAIL_NOTCH)));
    }
    List<Member> posts = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) -> posts.add(member("post", POST_SIZE, lengthIn, count, housings)));
    return posts;
  }

  /** Pieces of one length and with the same seats together, as they are cut. */
  private List<Member> headers() {
    Map<List<Object>, Integer> counts = new LinkedHashMap<>();
    for (HeaderPiece piece : cutHeaders.all()) {
      List<Object> key = List.of(told(piece.lengthIn()), seats(piece));
      List<Object> turned = List.of(told(piece.lengthIn()), turned(seats(piece), piece));
      counts.merge(counts.containsKey(turned) ? turned : key, 1, Integer::sum);
    }
    List<Member> headers = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          @SuppressWarnings("unchecked")
          List<Notch> seats = (List<Notch>) key.get(1);
          headers.add(member("header", HEADER_SIZE, (Double) key.get(0), count, seats));
        });
    return headers;
  }

  private List<Notch> seats(HeaderPiece piece) {
    List<Notch> seats = new ArrayList<>();
    if (geometry.headers().paired() || !(geometry.headers().notchIn() > 0)) {
      return seats;
    }
    double postIn = geometry.posts().breadthIn() * top.stretchRatio();
    for (int post = piece.fromPost(); post <= piece.toPost(); post++) {
      HeaderBearing bearing = HeaderBearing.of(piece, post, postIn);
      if (bearing.lengthIn() > 0) {
        seats.add(
            new Notch(
                "underside",
                told(bearing.middleIn() - piece.firstIn()),
                told(bearing.lengthIn()),
                geometry.headers().notchIn()));
      }
    }
    return seats;
  }

  private static List<Notch> turned(List<Notch> seats, HeaderPiece piece) {
    List<Notch> turned = new ArrayList<>();
    for (Notch seat : seats) {
      double atIn = told(piece.lengthIn() - seat.atIn());
      turned.add(0, new Notch(seat.face(), atIn, seat.widthIn(), seat.depthIn()));
    }
    return turned;
  }

  /** The last bits would make two lengths of one. */
  private static double told(double inches) {
    return Math.rint(inches / LAST_BITS) * LAST_BITS;
  }

  /** Those that lie alone, and those that lie side by side at the posts. */
  private List<Member> crossbeams() {
    Geometry.Crossbeams beams = geometry.crossbeams();
    int atPosts = beams.doubled() ? geometry.plan().bays() + 1 : 0;
    Member alone = crossbeams(geometry.crossbeamCount() - atPosts, 1);
    Member pairs = crossbeams(atPosts * beams.pliesAtPosts(), beams.pliesAtPosts());
    return Stream.of(alone, pairs).filter(each -> each.count() > 0).toList();
  }

  private Member crossbeams(int count, int plies) {
    Member one =
        member("crossbeam", CROSSBEAM_SIZE, geometry.crossbeamLengthIn(), count, crossbeamSeats());
    return new Member(
        one.role(),
        one.size(),
        plies,
        one.breadthIn(),
        one.depthIn(),
        one.lengthIn(),
        one.count(),
        one.species(),
        one.grade(),
        one.notches());
  }

  /** Crossbeam timber, ripped to what stands between the header and the top of the crossbeams. */
  private List<Member> blocking() {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    int onTails = 2 * 2 * geometry.crossbeamsOnTail();
    counts.put(told(geometry.crossbeamGapIn()), onTails);
    for (int bay = 0; bay < geometry.plan().bays(); bay++) {
      double gapIn = geometry.crossbeamSpacingIn(bay) - geometry.crossbeams().breadthIn();
      counts.merge(told(gapIn), 2 * geometry.spacesIn(bay) - overStep(bay), Integer::sum);
    }
    List<Member> blocks = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) -> {
          if (count > 0) {
            blocks.add(block(lengthIn, count));
          }
        });
    return blocks;
  }

  private Member block(double lengthIn, int count) {
    Member whole = member("blocking", CROSSBEAM_SIZE, lengthIn, count, List.of());
    return new Member(
        whole.role(),
        whole.size(),
        whole.plies(),
        whole.breadthIn(),
        geometry.crossbeams().blockDepthIn(),
        whole.lengthIn(),
        whole.count(),
        whole.species(),
        whole.grade(),
        whole.notches());
  }

  /** Crossbeams on headers of different levels have no block between them, in either row. */
  private int overStep(int bay) {
    return TopLines.stepped(answers) && bay > 0 ? 2 : 0;
  }

  /** One notch over each header timber; paired boards get a notch each. */
  private List<Notch> crossbeamSeats() {
    List<Notch> seats = new ArrayList<>();
    double depthIn = geometry.crossbeams().notchIn();
    double boardIn = geometry.headers().breadthIn();
    if (!(depthIn > 0)) {
      return seats;
    }
    for (double rowIn :
        new double[] {
          geometry.crossbeamTailIn(), geometry.crossbeamTailIn() + geometry.plan().rowSpacingIn()
        }) {
      if (geometry.headers().paired()) {
        double offsetIn = (geometry.posts().breadthIn() + boardIn) / 2;
        seats.add(new Notch("underside", rowIn - offsetIn, boardIn, depthIn));
        seats.add(new Notch("underside", rowIn + offsetIn, boardIn, depthIn));
      } else {
        seats.add(new Notch("underside", rowIn, boardIn, depthIn));
      }
    }
    return seats;
  }

  private List<Member> rails() {
    double lessIn = geometry.posts().breadthIn() - 2 * answers.number(RAIL_NOTCH);
    Map<Double, Integer> counts = new LinkedHashMap<>();
    for (double bayIn : geometry.plan().along().lengthsIn()) {
      counts.merge(bayIn - lessIn, 2, Integer::sum);
    }
    List<Member> rails = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) -> rails.add(member("rail", RAIL_SIZE, lengthIn, count, List.of())));
    return rails;
  }

  private boolean braced() {
    return answers.has(BRACE_SIZE) && answers.option(BRACING).equals(WayOfBuilding.KNEE_BRACES);
  }

  private Optional<KneeBraces> braces() {
    return braced()
        ? Optional.of(BraceRoom.braces(problem.context(answers), answers.number(BRACE_LEG)))
        : Optional.empty();
  }

  /** Two across the walk at every pair of posts, and those along it in each row by length. */
  private List<Member> braces(KneeBraces braces) {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    counts.put(told(braces.acrossLengthIn()), geometry.postCount());
    for (KneeBraces.Along each : braces.along()) {
      counts.merge(told(braces.alongLengthIn(each)), 2, Integer::sum);
    }
    List<Member> members = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) -> members.add(member("brace", BRACE_SIZE, lengthIn, count, List.of())));
    return members;
  }

  private Member member(
      String role, Question size, double lengthIn, int count, List<Notch> notches) {
    SizeRow row = problem.stock().row(answers.option(size));
    Grading grading = new Grading(problem.stock(), answers);
    return new Member(
        role,
        row.id(),
        Stock.plies(answers.option(size)),
        row.thicknessIn(),
        row.widthIn(),
        lengthIn,
        count,
        grading.species(size),
        grading.grade(size, answers.option(size)),
        notches);
  }
}
