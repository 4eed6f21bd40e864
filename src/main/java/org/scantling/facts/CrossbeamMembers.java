package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scantling.answers.Answers;
import org.scantling.candidates.TopLines;
import org.scantling.design.Geometry;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;

/** The crossbeams with their notches, and the blocks between them. */
final class CrossbeamMembers {
  private final Geometry geometry;
  private final Answers answers;
  private final MemberMaker maker;

  CrossbeamMembers(Geometry geometry, Answers answers, MemberMaker maker) {
    this.geometry = geometry;
    this.answers = answers;
    this.maker = maker;
  }

  List<Member> all() {
    List<Member> members = new ArrayList<>(crossbeams());
    if (geometry.crossbeams().blocked()) {
      members.addAll(blocking());
    }
    return members;
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
        maker.member(
            "crossbeam", CROSSBEAM_SIZE, geometry.crossbeamLengthIn(), count, crossbeamSeats());
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
    counts.put(MemberMaker.told(geometry.crossbeamGapIn()), onTails);
    for (int bay = 0; bay < geometry.plan().bays(); bay++) {
      double gapIn = geometry.crossbeamSpacingIn(bay) - geometry.crossbeams().breadthIn();
      counts.merge(
          MemberMaker.told(gapIn), 2 * geometry.spacesIn(bay) - overStep(bay), Integer::sum);
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
    Member whole = maker.member("blocking", CROSSBEAM_SIZE, lengthIn, count, List.of());
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
}
