package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.scantling.mechanics.Axes;
import org.scantling.mechanics.Frame;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameMember;
import org.scantling.mechanics.FrameNode;
import org.scantling.mechanics.Hinges;
import org.scantling.mechanics.MemberStiffness;
import org.scantling.mechanics.Section;
import org.scantling.mechanics.Support;

/**
 * One upright plane of a braced walk: posts pinned at their brackets and pinned to a beam on top,
 * which passes no moment on where it is cut over a post, with braces hinged at both ends between
 * post and beam.
 *
 * <p>Drawn on centre lines; the leg of a brace is measured between them too, which makes it a
 * little shorter, and its force a little greater, than built.
 */
final class BracedPlane {
  private final Outline outline;
  private final BracedLine beam;
  private final List<FrameNode> nodes = new ArrayList<>();
  private final List<FrameMember> members = new ArrayList<>();
  private final Frame frame;
  private final BracedReach whole;

  /**
   * @param postsAtIn centres of the posts, from left to right
   * @param tailIn from the centre of an end post to the tip of the beam
   * @param heightIn from the bracket to the centre of the beam
   * @param legIn of each brace along post and beam
   * @param cuts posts over which two pieces of the beam meet, counted from 0
   */
  record Outline(
      List<Double> postsAtIn, double tailIn, double heightIn, double legIn, List<Integer> cuts) {
    Outline {
      postsAtIn = List.copyOf(postsAtIn);
      cuts = List.copyOf(cuts);
      double leastIn = 2 * legIn;
      for (int i = 1; i < postsAtIn.size(); i++) {
        double apartIn = postsAtIn.get(i) - postsAtIn.get(i - 1);
        if (!(apartIn > leastIn)) {
          throw new IllegalArgumentException(
              "posts " + apartIn + " in apart must leave room for two legs of " + legIn + " in");
        }
      }
      if (!(heightIn > legIn)) {
        throw new IllegalArgumentException(
            "a height of " + heightIn + " in must be more than a leg of " + legIn + " in");
      }
    }
  }

  /**
   * @param beam the timber on top: the header of a row, or the crossbeam over two posts
   */
  BracedPlane(Outline outline, BracedTimbers timbers, Material beam) {
    this.outline = outline;
    this.beam = new BracedLine(marks(outline));
    layBeam(stiffness(beam));
    for (int post = 0; post < postCount(); post++) {
      stand(post, stiffness(timbers.post()));
      brace(post, stiffness(timbers.brace()));
    }
    this.frame = new Frame(nodes, members);
    this.whole = BracedReach.whole(this);
  }

  Frame frame() {
    return frame;
  }

  BracedLine beam() {
    return beam;
  }

  /** All of it. */
  BracedReach whole() {
    return whole;
  }

  int postCount() {
    return outline.postsAtIn().size();
  }

  double heightIn() {
    return outline.heightIn();
  }

  static String foot(int post) {
    return "foot." + post;
  }

  /** The post below its brace, from the bracket up. */
  static String shaft(int post) {
    return "shaft." + post;
  }

  /** The post above the foot of its brace, up to the beam. */
  static String neck(int post) {
    return "neck." + post;
  }

  /** The node of the beam over a post. */
  String top(int post) {
    return BracedLine.node(beam.mark(postAtIn(post)));
  }

  /** The piece of the beam that begins over a post and runs to the right. */
  String beyond(int post) {
    return BracedLine.piece(beam.mark(postAtIn(post)));
  }

  /** The weight of every post. */
  List<FrameLoad> postWeight(double lbPerIn) {
    List<FrameLoad> loads = new ArrayList<>();
    for (int post = 0; post < postCount(); post++) {
      loads.add(FrameLoad.Uniform.whole(shaft(post), Axes.GLOBAL, 0, -lbPerIn));
      loads.add(FrameLoad.Uniform.whole(neck(post), Axes.GLOBAL, 0, -lbPerIn));
    }
    return loads;
  }

  /** Wind from the left on every post: no row and no post shelters another. */
  List<FrameLoad> push(SidePush push) {
    List<FrameLoad> loads = new ArrayList<>();
    double lbPerIn = push.spreadLb() / outline.heightIn();
    for (int post = 0; post < postCount(); post++) {
      // The push acts a little above or below the top node: the same moment, there.
      loads.add(
          new FrameLoad.AtNode(top(post), push.topLb() * push.topAtIn() / push.heightIn(), 0, 0));
      loads.add(FrameLoad.Uniform.whole(shaft(post), Axes.GLOBAL, lbPerIn, 0));
      loads.add(FrameLoad.Uniform.whole(neck(post), Axes.GLOBAL, lbPerIn, 0));
    }
    return loads;
  }

  /** The same force sideways and downward at the top of every post. */
  List<FrameLoad> atTops(double sidewaysLb, double downLb) {
    List<FrameLoad> loads = new ArrayList<>();
    for (int post = 0; post < postCount(); post++) {
      loads.add(new FrameLoad.AtNode(top(post), sidewaysLb, -downLb, 0));
    }
    return loads;
  }

  /** Tips, posts and brace heads; the end posts have a brace on their inner side only. */
  private static List<Double> marks(Outline outline) {
    SortedSet<Double> marks = new TreeSet<>();
    int last = outline.postsAtIn().size() - 1;
    for (int post = 0; post <= last; post++) {
      double atIn = outline.postsAtIn().get(post);
      marks.add(atIn);
      if (post > 0) {
        marks.add(atIn - outline.legIn());
      }
      if (post < last) {
        marks.add(atIn + outline.legIn());
      }
    }
    marks.add(outline.postsAtIn().get(0) - outline.tailIn());
    marks.add(outline.postsAtIn().get(last) + outline.tailIn());
    return List.copyOf(marks);
  }

  private void layBeam(MemberStiffness stiffness) {
    for (int i = 0; i < beam.marksIn().size(); i++) {
      nodes.add(FrameNode.joint(BracedLine.node(i), beam.marksIn().get(i), outline.heightIn()));
    }
    List<Integer> ends = outline.cuts().stream().map(this::markOver).toList();
    for (int i = 0; i < beam.pieceCount(); i++) {
      // One of the two pieces hinged to the other is a joint that turns freely.
      Hinges hinges = ends.contains(i + 1) ? Hinges.END : Hinges.NONE;
      members.add(
          new FrameMember(
              BracedLine.piece(i), BracedLine.node(i), BracedLine.node(i + 1), stiffness, hinges));
    }
  }

  double postAtIn(int post) {
    return outline.postsAtIn().get(post);
  }

  /** The mark of the beam over a post. */
  int markOver(int post) {
    return beam.mark(postAtIn(post));
  }

  /** True where two pieces of the beam meet over a post. */
  boolean cutOver(int post) {
    return outline.cuts().contains(post);
  }

  private void stand(int post, MemberStiffness stiffness) {
    double atIn = outline.postsAtIn().get(post);
    nodes.add(new FrameNode(foot(post), atIn, 0, Support.PINNED));
    nodes.add(FrameNode.joint(knee(post), atIn, outline.heightIn() - outline.legIn()));
    members.add(FrameMember.rigid(shaft(post), foot(post), knee(post), stiffness));
    members.add(new FrameMember(neck(post), knee(post), top(post), stiffness, Hinges.END));
  }

  /** The braces of a post, by name: an end post has one. */
  List<String> braces(int post) {
    List<String> names = new ArrayList<>();
    if (hasLeft(post)) {
      names.add(left(post));
    }
    if (hasRight(post)) {
      names.add(right(post));
    }
    return names;
  }

  boolean hasLeft(int post) {
    return post > 0;
  }

  boolean hasRight(int post) {
    return post < postCount() - 1;
  }

  static String left(int post) {
    return "brace." + post + ".left";
  }

  static String right(int post) {
    return "brace." + post + ".right";
  }

  private void brace(int post, MemberStiffness stiffness) {
    double atIn = outline.postsAtIn().get(post);
    if (hasLeft(post)) {
      brace(post, left(post), atIn - outline.legIn(), stiffness);
    }
    if (hasRight(post)) {
      brace(post, right(post), atIn + outline.legIn(), stiffness);
    }
  }

  private void brace(int post, String name, double headIn, MemberStiffness stiffness) {
    members.add(FrameMember.brace(name, knee(post), BracedLine.node(beam.mark(headIn)), stiffness));
  }

  private static String knee(int post) {
    return "knee." + post;
  }

  private static MemberStiffness stiffness(Material material) {
    Section section =
        new Section(material.section().breadthIn(), material.section().depthIn(), material.plies());
    return MemberStiffness.onEdge(section, material.lasting(1).elasticity().psi());
  }
}
