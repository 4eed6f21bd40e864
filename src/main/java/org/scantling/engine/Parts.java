package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;
import org.scantling.design.WayOfBuilding;
import org.scantling.loads.MemberWeight;
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
import org.scantling.tables.SizeRow;
import org.scantling.tables.TopSpare;

/** Every kind of member of the finished answers, with its length, count and notches. */
final class Parts {
  private final Job job;
  private final Answers answers;
  private final Geometry geometry;

  Parts(Job job, Answers answers) {
    this.job = job;
    this.answers = answers;
    this.geometry = job.bench(answers).geometry();
  }

  /** What the whole comes to: its timber and how many sizes differ from the base. */
  BayTrial trial() {
    double timberIn3 = 0;
    for (Member member : all()) {
      timberIn3 += member.breadthIn() * member.depthIn() * member.lengthIn() * member.count();
    }
    int newSizes = 0;
    for (Proven proven : job.base().facts()) {
      boolean size = proven.question().attribute().equals("size");
      if (size && !proven.option().equals(answers.option(proven.question()))) {
        newSizes++;
      }
    }
    return new BayTrial(answers.option(BAYS), timberIn3, newSizes);
  }

  /** The piece that weighs most, wet, for whoever has to lift it. */
  Worked heaviest() {
    Worked heaviest = null;
    for (Member member : all()) {
      double unitWeightPcf =
          job.stock()
              .material(member.size(), member.species(), member.grade())
              .orElseThrow()
              .unitWeightPcf();
      double weightLb =
          MemberWeight.of(member.breadthIn(), member.depthIn(), unitWeightPcf)
              .weightLb(pieceIn(member));
      if (heaviest == null || weightLb > heaviest.number()) {
        heaviest = piece(member, weightLb);
      }
    }
    return heaviest;
  }

  /** A header is lifted in the pieces it is cut into, a post before its top is trimmed. */
  private double pieceIn(Member member) {
    return switch (member.role()) {
      case "header" -> HeaderCuts.of(job.bench(answers)).longestPieceIn();
      case "post" -> {
        yield new TopSpare(shopIn("setout.post-spare"), shopIn("setout.post-spare-least"))
            .cutIn(member.lengthIn(), job.soldIn(member.size()));
      }
      default -> member.lengthIn();
    };
  }

  /** As the cut list has it: what was chosen for being handy is round on a metric tape. */
  private double shopIn(String row) {
    double inches = job.tables().shop(row).amount();
    return job.metric() ? Length.handyMetric(inches) : inches;
  }

  private static Worked piece(Member member, double weightLb) {
    return new Worked(
        "piece.heaviest",
        BAYS,
        weightLb,
        Evidence.saw("piece", member.role() + " " + member.size())
            .and("weight", new Measure(weightLb, Unit.POUND_WEIGHT)),
        new Source(SourceKind.CALCULATION, "dressed size and wet weight", false));
  }

  Structure structure() {
    return new Structure(geometry, all(), footings(), bolts());
  }

  private List<Member> all() {
    List<Member> members = new ArrayList<>();
    members.add(posts());
    members.add(headers());
    members.add(crossbeams());
    if (answers.has(RAIL_SIZE)) {
      members.add(rails());
    }
    if (answers.has(BRACE_SIZE) && answers.option(BRACING).equals(WayOfBuilding.KNEE_BRACES)) {
      members.add(braces());
    }
    return members;
  }

  private Optional<Structure.Bolts> bolts() {
    Bench bench = job.bench(answers);
    return answers
        .find(HEADER_JOINT)
        .map(answer -> job.tables().joints().row(answer.option()))
        .flatMap(row -> new JointBench(bench).bolts(row));
  }

  private Structure.Footings footings() {
    return new Structure.Footings(
        answers.option(FOOTING_KIND),
        answers.number(FOOTING_DEPTH),
        answers.number(HOLE_DIAMETER),
        geometry.postCount(),
        answers.option(FOOTING_BACKFILL));
  }

  private Member posts() {
    boolean buried = answers.option(FOOTING_KIND).equals(WayOfBuilding.EMBEDDED);
    double buriedIn = buried ? answers.number(FOOTING_DEPTH) : 0;
    List<Notch> housings = new ArrayList<>();
    if (answers.has(RAIL_SIZE)) {
      double railIn = job.stock().row(answers.option(RAIL_SIZE)).widthIn();
      housings.add(
          new Notch(
              "inner", buriedIn + answers.number(RAIL_HEIGHT), railIn, answers.number(RAIL_NOTCH)));
    }
    return member(
        "post", POST_SIZE, geometry.posts().heightIn() + buriedIn, geometry.postCount(), housings);
  }

  private Member headers() {
    List<Notch> seats = new ArrayList<>();
    if (!geometry.headers().paired() && geometry.headers().notchIn() > 0) {
      for (int post = 0; post <= geometry.plan().bays(); post++) {
        seats.add(
            new Notch(
                "underside",
                geometry.headerTailIn() + post * geometry.plan().bayIn(),
                geometry.posts().breadthIn(),
                geometry.headers().notchIn()));
      }
    }
    return member(
        "header", HEADER_SIZE, geometry.headerLengthIn(), 2 * geometry.headers().plies(), seats);
  }

  private Member crossbeams() {
    return member(
        "crossbeam",
        CROSSBEAM_SIZE,
        geometry.crossbeamLengthIn(),
        geometry.crossbeamCount(),
        crossbeamSeats());
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

  private Member rails() {
    double betweenIn =
        geometry.plan().bayIn() - geometry.posts().breadthIn() + 2 * answers.number(RAIL_NOTCH);
    return member("rail", RAIL_SIZE, betweenIn, 2 * geometry.plan().bays(), List.of());
  }

  /**
   * Two across the walk at every pair of posts, and one on either side of a post along each row
   * where there is a bay. Each is as long as the sloping side between the tips of its legs.
   */
  private Member braces() {
    int across = geometry.postCount();
    int along = 4 * geometry.plan().bays();
    double lengthIn = answers.number(BRACE_LEG) * Math.sqrt(2);
    double depthIn = job.stock().row(answers.option(BRACE_SIZE)).widthIn();
    return member("brace", BRACE_SIZE, lengthIn + depthIn, across + along, List.of());
  }

  private Member member(
      String role, Question size, double lengthIn, int count, List<Notch> notches) {
    SizeRow row = job.stock().row(answers.option(size));
    Grading grading = new Grading(job.stock(), answers);
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
