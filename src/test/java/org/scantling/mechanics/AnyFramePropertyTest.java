package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * Frames of no design: nodes strewn about, each tied to an earlier one, some tied twice, some held
 * or on springs, loaded anywhere. Whatever the shape, every joint and the whole must be in balance.
 */
class AnyFramePropertyTest {
  private static final MemberStiffness TIMBER = new MemberStiffness(4e7, 1e8, 3e6);
  private static final MemberStiffness BRACE = MemberStiffness.slender(2e7, 2e7);

  /** A frame with the loads on it, and each load's pull and turn about the origin. */
  private static final class Case {
    private final Random random;
    private final List<FrameNode> nodes = new ArrayList<>();
    private final List<FrameMember> members = new ArrayList<>();
    private final List<FrameLoad> loads = new ArrayList<>();
    private final double[] total = new double[3];
    private final double[][] onNode;

    Case(int count, long seed) {
      random = new Random(seed);
      onNode = new double[count][3];
      for (int i = 0; i < count; i++) {
        nodes.add(new FrameNode("n" + i, 100 * i + between(-40, 40), between(-120, 120), hold(i)));
        if (i > 0) {
          tie(random.nextInt(i), i, i > 2 && random.nextBoolean());
        }
      }
      for (int i = 0; i < 6; i++) {
        load();
      }
    }

    private double between(double low, double high) {
      return low + (high - low) * random.nextDouble();
    }

    private Support hold(int i) {
      return switch (i == 0 ? 0 : random.nextInt(6)) {
        case 0 -> Support.FIXED;
        case 1 -> Support.PINNED;
        case 2 -> new Support(between(100, 1e5), between(100, 1e5), between(1e4, 1e7));
        default -> Support.FREE;
      };
    }

    private void tie(int from, int to, boolean twice) {
      members.add(FrameMember.rigid("m" + to, "n" + from, "n" + to, TIMBER));
      int other = (from + 1) % to;
      if (twice && other != from) {
        members.add(FrameMember.brace("b" + to, "n" + to, "n" + other, BRACE));
      }
    }

    private void load() {
      double x = between(-300, 300);
      double y = between(-300, 300);
      if (random.nextInt(3) == 0) {
        int node = random.nextInt(nodes.size());
        double moment = node == 0 ? 0 : between(-5000, 5000);
        loads.add(new FrameLoad.AtNode("n" + node, x, y, moment));
        onNode[node][0] += x;
        onNode[node][1] += y;
        onNode[node][2] += moment;
        count(nodes.get(node).xIn(), nodes.get(node).yIn(), x, y);
        total[2] += moment;
        return;
      }
      FrameMember member = members.get(random.nextInt(members.size()));
      double length = length(member);
      double at = between(0, length);
      if (random.nextBoolean()) {
        loads.add(new FrameLoad.Point(member.name(), Axes.GLOBAL, at, x, y));
      } else {
        double half = Math.min(at, length - at);
        double perIn = 1 / (2 * half);
        loads.add(
            new FrameLoad.Uniform(
                member.name(), Axes.GLOBAL, at - half, at + half, x * perIn, y * perIn));
      }
      FrameNode start = node(member.startNode());
      FrameNode end = node(member.endNode());
      double share = at / length;
      count(
          start.xIn() + share * (end.xIn() - start.xIn()),
          start.yIn() + share * (end.yIn() - start.yIn()),
          x,
          y);
    }

    private void count(double atX, double atY, double x, double y) {
      total[0] += x;
      total[1] += y;
      total[2] += atX * y - atY * x;
    }

    FrameNode node(String name) {
      return nodes.get(Integer.parseInt(name.substring(1)));
    }

    double length(FrameMember member) {
      FrameNode start = node(member.startNode());
      FrameNode end = node(member.endNode());
      return Math.hypot(end.xIn() - start.xIn(), end.yIn() - start.yIn());
    }

    FrameResult solved() {
      return new Frame(nodes, members).solve(loads.toArray(FrameLoad[]::new));
    }
  }

  @Property
  void reactions_balance_the_loads(
      @ForAll @IntRange(min = 2, max = 9) int nodes, @ForAll long seed) {
    Case one = new Case(nodes, seed);
    FrameResult result = one.solved();
    double[] sum = one.total.clone();
    for (FrameNode node : one.nodes) {
      NodeForce force = result.reaction(node.name());
      sum[0] += force.xLb();
      sum[1] += force.yLb();
      sum[2] += force.momentInLb() + node.xIn() * force.yLb() - node.yIn() * force.xLb();
    }
    assertThat(sum[0]).isCloseTo(0, within(1e-4));
    assertThat(sum[1]).isCloseTo(0, within(1e-4));
    assertThat(sum[2]).isCloseTo(0, within(1e-1));
  }

  @Property
  void every_joint_is_in_balance(@ForAll @IntRange(min = 2, max = 9) int nodes, @ForAll long seed) {
    Case one = new Case(nodes, seed);
    FrameResult result = one.solved();
    double[][] left = new double[nodes][3];
    for (int i = 0; i < nodes; i++) {
      NodeForce force = result.reaction("n" + i);
      left[i][0] = one.onNode[i][0] + force.xLb();
      left[i][1] = one.onNode[i][1] + force.yLb();
      left[i][2] = one.onNode[i][2] + force.momentInLb();
    }
    for (FrameMember member : one.members) {
      takeOff(left, one, member, result.member(member.name()).endForces());
    }
    for (int i = 0; i < nodes; i++) {
      assertThat(left[i][0]).as("sideways at n%s", i).isCloseTo(0, within(1e-4));
      assertThat(left[i][1]).as("upwards at n%s", i).isCloseTo(0, within(1e-4));
      assertThat(left[i][2]).as("turning at n%s", i).isCloseTo(0, within(1e-1));
    }
  }

  /** What acts on a member's end is taken from the joint. */
  private static void takeOff(double[][] left, Case one, FrameMember member, MemberEndForces f) {
    FrameNode start = one.node(member.startNode());
    FrameNode end = one.node(member.endNode());
    double c = (end.xIn() - start.xIn()) / one.length(member);
    double s = (end.yIn() - start.yIn()) / one.length(member);
    double[] first = left[one.nodes.indexOf(start)];
    double[] last = left[one.nodes.indexOf(end)];
    first[0] -= c * f.startAxialLb() - s * f.startShearLb();
    first[1] -= s * f.startAxialLb() + c * f.startShearLb();
    first[2] -= f.startMomentInLb();
    last[0] -= c * f.endAxialLb() - s * f.endShearLb();
    last[1] -= s * f.endAxialLb() + c * f.endShearLb();
    last[2] -= f.endMomentInLb();
  }

  @Property
  void a_row_of_bracket_posts_falls_however_long_until_one_bay_is_braced(
      @ForAll @IntRange(min = 1, max = 40) int bays,
      @ForAll @DoubleRange(min = 0, max = 6.2) double turn,
      @ForAll @DoubleRange(min = 30, max = 150) double bayIn,
      @ForAll @IntRange(min = 0, max = 39) int braced) {
    List<FrameNode> nodes = new ArrayList<>();
    List<FrameMember> members = new ArrayList<>();
    for (int i = 0; i <= bays; i++) {
      nodes.add(turned("foot" + i, i * bayIn, 0, turn, Support.PINNED));
      nodes.add(turned("top" + i, i * bayIn, 90, turn, Support.FREE));
      members.add(FrameMember.rigid("post" + i, "foot" + i, "top" + i, TIMBER));
      if (i > 0) {
        members.add(FrameMember.brace("header" + i, "top" + (i - 1), "top" + i, TIMBER));
      }
    }
    assertThatThrownBy(() -> new Frame(nodes, members))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching(
            "the frame is a mechanism: nothing keeps node top\\d+ from moving .* \\([xy]\\)");
    int at = braced % bays;
    members.add(FrameMember.brace("brace", "foot" + at, "top" + (at + 1), BRACE));
    Frame standing = new Frame(nodes, members);
    NodeMovement moved =
        standing
            .solve(new FrameLoad.AtNode("top0", Math.cos(turn), Math.sin(turn), 0))
            .movement("top0");
    assertThat(moved.xIn() * Math.cos(turn) + moved.yIn() * Math.sin(turn)).isPositive();
  }

  private static FrameNode turned(String name, double x, double y, double turn, Support support) {
    return new FrameNode(
        name,
        x * Math.cos(turn) - y * Math.sin(turn),
        x * Math.sin(turn) + y * Math.cos(turn),
        support);
  }
}
