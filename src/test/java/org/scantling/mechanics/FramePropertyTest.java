package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Rows of posts of random heights, bays and joints, some with braces, under random loads. */
class FramePropertyTest {
  private static final MemberStiffness POST = MemberStiffness.slender(4.84e7, 1.22e8);
  private static final MemberStiffness HEADER = new MemberStiffness(4.44e7, 3.17e8, 2.3e6);
  private static final MemberStiffness BRACE = MemberStiffness.slender(1.96e7, 2e7);

  record Bay(double width, double height, Hinges hinges, boolean braced, boolean firm) {}

  /** A load on the header or post of a bay, at a share of it. */
  record Push(int bay, boolean onPost, Axes axes, double share, double x, double y) {}

  record Row(List<Bay> bays, double side) {
    List<FrameNode> nodes() {
      List<FrameNode> nodes = new ArrayList<>();
      nodes.add(new FrameNode("foot 0", 0, 0, Support.FIXED));
      nodes.add(FrameNode.joint("top 0", 0, 90));
      double x = 0;
      for (int i = 0; i < bays.size(); i++) {
        Bay bay = bays.get(i);
        x += side * bay.width;
        Support foot = bay.firm ? Support.turningSpring(2e6) : Support.PINNED;
        nodes.add(new FrameNode("foot " + (i + 1), x, 0, foot));
        nodes.add(FrameNode.joint("top " + (i + 1), x, bay.height));
      }
      return nodes;
    }

    Frame frame() {
      List<FrameMember> members = new ArrayList<>();
      members.add(FrameMember.rigid("post 0", "foot 0", "top 0", POST));
      for (int i = 0; i < bays.size(); i++) {
        String here = "top " + (i + 1);
        members.add(FrameMember.rigid("post " + (i + 1), "foot " + (i + 1), here, POST));
        members.add(new FrameMember("header " + i, "top " + i, here, HEADER, bays.get(i).hinges));
        if (bays.get(i).braced) {
          members.add(FrameMember.brace("brace " + i, "foot " + i, here, BRACE));
        }
      }
      return new Frame(nodes(), members);
    }

    FrameNode node(String name) {
      return nodes().stream().filter(n -> n.name().equals(name)).findFirst().orElseThrow();
    }

    String member(Push push) {
      int bay = push.bay % bays.size();
      return (push.onPost ? "post " : "header ") + bay;
    }

    FrameLoad load(Push push, double factor) {
      double x = factor * (push.axes == Axes.GLOBAL ? side : 1) * push.x;
      double y = factor * (push.axes == Axes.MEMBER ? side : 1) * push.y;
      double length = length(push);
      return push.share > 0.5
          ? new FrameLoad.Point(member(push), push.axes, push.share * length, x, y)
          : new FrameLoad.Uniform(
              member(push), push.axes, push.share * length, 0.9 * length, x / 50, y / 50);
    }

    FrameLoad[] loads(List<Push> pushes, double factor) {
      return pushes.stream().map(push -> load(push, factor)).toArray(FrameLoad[]::new);
    }

    FrameNode[] ends(Push push) {
      int bay = push.bay % bays.size();
      return push.onPost
          ? new FrameNode[] {node("foot " + bay), node("top " + bay)}
          : new FrameNode[] {node("top " + bay), node("top " + (bay + 1))};
    }

    double length(Push push) {
      FrameNode[] ends = ends(push);
      return Math.hypot(ends[1].xIn() - ends[0].xIn(), ends[1].yIn() - ends[0].yIn());
    }

    /** Force sideways, force upwards and moment about the origin of a load. */
    double[] total(Push push) {
      FrameNode[] ends = ends(push);
      double length = length(push);
      double c = (ends[1].xIn() - ends[0].xIn()) / length;
      double s = (ends[1].yIn() - ends[0].yIn()) / length;
      double amount = push.share > 0.5 ? 1 : (0.9 - push.share) * length / 50;
      double at = (push.share > 0.5 ? push.share : (0.9 + push.share) / 2) * length;
      double x = push.x * amount;
      double y = push.y * amount;
      double fx = push.axes == Axes.GLOBAL ? x : c * x - s * y;
      double fy = push.axes == Axes.GLOBAL ? y : s * x + c * y;
      double px = ends[0].xIn() + c * at;
      double py = ends[0].yIn() + s * at;
      return new double[] {fx, fy, px * fy - py * fx};
    }
  }

  @Provide
  Arbitrary<Row> rows() {
    return Combinators.combine(
            Arbitraries.doubles().between(40, 160),
            Arbitraries.doubles().between(60, 120),
            Arbitraries.of(Hinges.class),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false))
        .as(Bay::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(bays -> new Row(standing(bays), 1))
        .withoutEdgeCases();
  }

  /** A pinned post with a header hinged at it would fall: those get a firm foot. */
  private static List<Bay> standing(List<Bay> bays) {
    return bays.stream()
        .map(
            b -> b.hinges == Hinges.NONE ? b : new Bay(b.width, b.height, b.hinges, b.braced, true))
        .toList();
  }

  @Provide
  Arbitrary<List<Push>> pushes() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 5),
            Arbitraries.of(true, false),
            Arbitraries.of(Axes.class),
            Arbitraries.doubles().between(0, 1),
            Arbitraries.doubles().between(-500, 500),
            Arbitraries.doubles().between(-500, 500))
        .as(Push::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .withoutEdgeCases();
  }

  @Property
  void supports_and_loads_are_in_balance(
      @ForAll("rows") Row row, @ForAll("pushes") List<Push> pushes) {
    FrameResult result = row.frame().solve(row.loads(pushes, 1));
    double[] sum = new double[3];
    for (FrameNode node : row.nodes()) {
      NodeForce force = result.reaction(node.name());
      sum[0] += force.xLb();
      sum[1] += force.yLb();
      sum[2] += force.momentInLb() + node.xIn() * force.yLb() - node.yIn() * force.xLb();
    }
    for (Push push : pushes) {
      double[] total = row.total(push);
      for (int i = 0; i < 3; i++) {
        sum[i] += total[i];
      }
    }
    assertThat(sum[0]).isCloseTo(0, within(1e-4));
    assertThat(sum[1]).isCloseTo(0, within(1e-4));
    assertThat(sum[2]).isCloseTo(0, within(1e-1));
  }

  @Property
  void each_member_is_in_balance_and_follows_its_nodes(
      @ForAll("rows") Row row, @ForAll("pushes") List<Push> pushes) {
    FrameResult result = row.frame().solve(row.loads(pushes, 1));
    for (int i = 0; i < row.bays().size(); i++) {
      MemberResult post = result.member("post " + i);
      double top = result.movement("top " + i).xIn();
      // A post runs upwards: its left is against x.
      assertThat(post.movementIn(post.lengthIn()))
          .isCloseTo(-top, within(1e-9 + 1e-7 * Math.abs(top)));
      assertThat(post.movementIn(0)).isCloseTo(0, within(1e-12));
      assertThat(post.momentInLb(0)).isCloseTo(-post.endForces().startMomentInLb(), within(1e-4));
      assertThat(post.momentInLb(post.lengthIn()))
          .isCloseTo(post.endForces().endMomentInLb(), within(1e-3));
    }
    for (int i = 0; i < row.bays().size(); i++) {
      MemberResult piece = result.member("header " + i);
      FrameNode start = row.node("top " + i);
      FrameNode end = row.node("top " + (i + 1));
      double c = (end.xIn() - start.xIn()) / piece.lengthIn();
      double s = (end.yIn() - start.yIn()) / piece.lengthIn();
      NodeMovement here = result.movement("top " + i);
      NodeMovement there = result.movement("top " + (i + 1));
      assertThat(piece.movementIn(0)).isCloseTo(c * here.yIn() - s * here.xIn(), within(1e-8));
      assertThat(piece.movementIn(piece.lengthIn()))
          .isCloseTo(c * there.yIn() - s * there.xIn(), within(1e-7));
      MemberEndForces header = piece.endForces();
      Hinges hinges = row.bays().get(i).hinges();
      if (hinges == Hinges.START || hinges == Hinges.BOTH) {
        assertThat(header.startMomentInLb()).isCloseTo(0, within(1e-6));
      }
      if (hinges == Hinges.END || hinges == Hinges.BOTH) {
        assertThat(header.endMomentInLb()).isCloseTo(0, within(1e-3));
      }
    }
  }

  @Property
  void a_mirrored_row_answers_in_the_mirror(
      @ForAll("rows") Row row, @ForAll("pushes") List<Push> pushes) {
    Row mirror = new Row(row.bays(), -1);
    FrameResult one = row.frame().solve(row.loads(pushes, 1));
    // In the mirror a post's left is its right: loads across it in its own axes turn as well.
    FrameResult other = mirror.frame().solve(mirror.loads(pushes, 1));
    for (int i = 0; i <= row.bays().size(); i++) {
      NodeMovement here = one.movement("top " + i);
      NodeMovement there = other.movement("top " + i);
      double size = 1e-7 * (1 + Math.abs(here.xIn()) + Math.abs(here.yIn()));
      assertThat(there.xIn()).isCloseTo(-here.xIn(), within(size));
      assertThat(there.yIn()).isCloseTo(here.yIn(), within(size));
      assertThat(there.turnRad()).isCloseTo(-here.turnRad(), within(size));
    }
  }

  @Property
  void loads_add_up(
      @ForAll("rows") Row row,
      @ForAll("pushes") List<Push> some,
      @ForAll("pushes") List<Push> others,
      @ForAll @DoubleRange(min = -2, max = 2) double factor) {
    Frame frame = row.frame();
    List<FrameLoad> first = List.of(row.loads(some, 1));
    List<FrameLoad> second = List.of(row.loads(others, 1));
    FrameResult combined = FrameResult.combine(frame.solve(List.of(first, second)), 1, factor);
    List<FrameLoad> all = new ArrayList<>(first);
    all.addAll(List.of(row.loads(others, factor)));
    FrameResult direct = frame.solve(all.toArray(FrameLoad[]::new));
    assertThat(combined.movement("top 1").xIn())
        .isCloseTo(direct.movement("top 1").xIn(), within(1e-7));
    assertThat(combined.reaction("foot 1").yLb())
        .isCloseTo(direct.reaction("foot 1").yLb(), within(1e-3));
    assertThat(combined.member("header 0").largestMoment().amount())
        .isCloseTo(direct.member("header 0").largestMoment().amount(), within(1e-2));
  }

  @Property
  void more_of_the_same_load_never_bends_or_moves_it_less(
      @ForAll("rows") Row row,
      @ForAll("pushes") List<Push> pushes,
      @ForAll @DoubleRange(min = 1, max = 4) double factor) {
    Frame frame = row.frame();
    FrameResult less = frame.solve(row.loads(pushes, 1));
    FrameResult more = frame.solve(row.loads(pushes, factor));
    assertThat(Math.abs(more.member("post 0").largestMoment().amount()))
        .isGreaterThanOrEqualTo(Math.abs(less.member("post 0").largestMoment().amount()) - 1e-4);
    assertThat(Math.abs(more.movement("top 1").xIn()))
        .isGreaterThanOrEqualTo(Math.abs(less.movement("top 1").xIn()) - 1e-9);
  }

  @Property
  void a_push_and_the_movement_it_makes_elsewhere_can_change_places(@ForAll("rows") Row row) {
    // Maxwell's reciprocal theorem.
    Frame frame = row.frame();
    double there = frame.solve(new FrameLoad.AtNode("top 0", 1000, 0, 0)).movement("top 1").yIn();
    double back = frame.solve(new FrameLoad.AtNode("top 1", 0, 1000, 0)).movement("top 0").xIn();
    assertThat(there).isCloseTo(back, within(1e-9));
  }

  @Property
  void a_chain_of_hinged_pieces_is_refused_however_it_lies(
      @ForAll @DoubleRange(min = 0, max = 6.2) double turn,
      @ForAll @DoubleRange(min = 20, max = 150) double run,
      @ForAll @DoubleRange(min = -80, max = 80) double rise) {
    // Two posts on pins and a hinged header, a parallelogram or not, at any angle: one movement
    // left.
    double[][] places = {{0, 0}, {3, 84}, {run, 90 + rise}, {run + 5, 0}};
    List<FrameNode> nodes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double x = places[i][0] * Math.cos(turn) - places[i][1] * Math.sin(turn);
      double y = places[i][0] * Math.sin(turn) + places[i][1] * Math.cos(turn);
      nodes.add(new FrameNode("n" + i, x, y, i == 0 || i == 3 ? Support.PINNED : Support.FREE));
    }
    List<FrameMember> members =
        List.of(
            FrameMember.rigid("post", "n0", "n1", POST),
            FrameMember.brace("header", "n1", "n2", HEADER),
            FrameMember.rigid("other", "n3", "n2", POST));
    assertThatThrownBy(() -> new Frame(nodes, members))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching(
            "the frame is a mechanism: nothing keeps node n[12] from moving .* \\([xy]\\)");
  }
}
