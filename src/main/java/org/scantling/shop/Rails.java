package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.Point;
import org.scantling.design.Structure;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;

/** The rails: from post to post, let into both. */
final class Rails {
  private static final Sayings SAYINGS = Sayings.of("pieces");
  private static final Shape.Ends ENDS = Shape.Ends.named("first", "last");

  private final Built built;
  private final Geometry geometry;
  private final Tape tape;

  Rails(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.tape = built.tape();
  }

  List<Placed> all() {
    List<Placed> rails = new ArrayList<>();
    if (built.has("rail")) {
      for (int row = 0; row < 2; row++) {
        for (int bay = 0; bay < geometry.plan().bays(); bay++) {
          rails.add(rail(row, bay));
        }
      }
    }
    return rails;
  }

  private Placed rail(int row, int bay) {
    Structure.Member member = built.member("rail");
    RailLine line = new RailLine(built, row, bay);
    double acrossIn = row * geometry.plan().rowSpacingIn();
    double intoIn = geometry.posts().breadthIn() / 2 - built.number(Question.RAIL_NOTCH);
    double fromIn = built.top().alongIn(bay) + intoIn;
    double toIn = built.top().alongIn(bay + 1) - intoIn;
    // Plumb ends on a sloping rail: the long points stand out by half the rise over the depth.
    double pointIn = member.depthIn() / 2 * Math.abs(line.fallRatio());
    double stretch = Math.hypot(1, line.fallRatio());
    double lengthIn = (toIn - fromIn) * stretch + 2 * pointIn;
    double cosine = 1 / stretch;
    Point first = new Point(fromIn - pointIn * cosine, acrossIn, 0);
    Point last = new Point(toIn + pointIn * cosine, acrossIn, 0);
    return new Placed(
        shape(member, lengthIn, line),
        new Place(
            first.plus(0, line.middleIn(first.alongIn())),
            last.plus(0, line.middleIn(last.alongIn()))));
  }

  private Shape shape(Structure.Member member, double lengthIn, RailLine line) {
    return new Shape(
        "rail",
        member.size(),
        member.breadthIn(),
        member.depthIn(),
        tape.nearest(lengthIn),
        0,
        ENDS,
        end(member, line, SAYINGS.say("long.upper-edge")),
        end(member, line, SAYINGS.say("long.lower-edge")),
        List.of(),
        List.of());
  }

  private EndCut end(Structure.Member member, RailLine line, String longEdge) {
    double fall = Math.abs(line.fallRatio());
    return fall > 0
        ? new EndCut.Sloping(
            Math.toDegrees(Math.atan(fall)), tape.nearest(member.depthIn() * fall), longEdge)
        : EndCut.square();
  }
}
