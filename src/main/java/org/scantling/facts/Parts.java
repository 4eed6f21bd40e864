package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.JointChecks;
import org.scantling.candidates.TopLines;
import org.scantling.design.CutHeaders;
import org.scantling.design.Geometry;
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
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;
import org.scantling.tables.FreshWeight;
import org.scantling.tables.TopSpare;

/** Every kind of member of the finished answers, with its length, count and notches. */
public final class Parts {
  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;
  private final TopLine top;
  private final CutHeaders cutHeaders;
  private final MemberMaker maker;

  public Parts(DesignProblem problem, Answers answers) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = problem.context(answers).geometry();
    this.top = TopLines.of(problem.context(answers));
    this.cutHeaders = new CutHeaders(top, problem.context(answers).splice());
    this.maker = new MemberMaker(problem.stock(), answers);
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
    members.addAll(new HeaderMembers(geometry, top, cutHeaders, maker).all());
    members.addAll(new CrossbeamMembers(geometry, answers, maker).all());
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
        answers.option(FOOTING_BACKFILL),
        new RockBelow(problem, problem.context(answers)).stands(answers.number(FOOTING_DEPTH)));
  }

  /** Those of one length together, from foot to top as they stand. */
  private List<Member> posts() {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post < top.posts(); post++) {
        counts.merge(MemberMaker.told(top.postLengthIn(row, post)), 1, Integer::sum);
      }
    }
    List<Notch> housings = new ArrayList<>();
    if (answers.has(RAIL_SIZE)) {
      double railIn = problem.stock().row(answers.option(RAIL_SIZE)).widthIn();
      housings.add(
          new Notch(
              "inner",
              top.belowGroundIn(0, 0) + answers.number(RAIL_HEIGHT),
              railIn,
              answers.number(RAIL_NOTCH)));
    }
    List<Member> posts = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) -> posts.add(maker.member("post", POST_SIZE, lengthIn, count, housings)));
    return posts;
  }

  private List<Member> rails() {
    double lessIn = geometry.posts().breadthIn() - 2 * answers.number(RAIL_NOTCH);
    Map<Double, Integer> counts = new LinkedHashMap<>();
    for (double bayIn : geometry.plan().along().lengthsIn()) {
      counts.merge(bayIn - lessIn, 2, Integer::sum);
    }
    List<Member> rails = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) ->
            rails.add(maker.member("rail", RAIL_SIZE, lengthIn, count, List.of())));
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
    counts.put(MemberMaker.told(braces.acrossLengthIn()), geometry.postCount());
    for (KneeBraces.Along each : braces.along()) {
      counts.merge(MemberMaker.told(braces.alongLengthIn(each)), 2, Integer::sum);
    }
    List<Member> members = new ArrayList<>();
    counts.forEach(
        (lengthIn, count) ->
            members.add(maker.member("brace", BRACE_SIZE, lengthIn, count, List.of())));
    return members;
  }
}
