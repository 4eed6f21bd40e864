package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FrameTest {
  private static final MemberStiffness POST = MemberStiffness.slender(4.84e7, 1.22e8);
  private static final MemberStiffness HEADER = MemberStiffness.slender(4.44e7, 3.17e8);

  private static List<FrameNode> portalNodes(Support foot) {
    return List.of(
        new FrameNode("left foot", 0, 0, foot),
        FrameNode.joint("left top", 0, 96),
        FrameNode.joint("right top", 144, 96),
        new FrameNode("right foot", 144, 0, foot));
  }

  private static Frame portal(Support foot, Hinges header) {
    return new Frame(
        portalNodes(foot),
        List.of(
            FrameMember.rigid("left post", "left foot", "left top", POST),
            new FrameMember("header", "left top", "right top", HEADER, header),
            FrameMember.rigid("right post", "right foot", "right top", POST)));
  }

  @Test
  void a_portal_of_pinned_feet_and_hinged_header_sways_freely_and_is_refused() {
    assertThatThrownBy(() -> portal(Support.PINNED, Hinges.BOTH))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "the frame is a mechanism: nothing keeps node left top from moving sideways (x)");
  }

  @Test
  void a_beam_on_rollers_slides_away_and_is_refused() {
    Support roller = Support.SLIDING_SIDEWAYS;
    List<FrameNode> nodes =
        List.of(new FrameNode("west", 0, 0, roller), new FrameNode("east", 100, 0, roller));
    List<FrameMember> members = List.of(FrameMember.rigid("beam", "west", "east", HEADER));
    assertThatThrownBy(() -> new Frame(nodes, members))
        .hasMessage("the frame is a mechanism: nothing keeps node west from moving sideways (x)");
  }

  @Test
  void an_inner_hinge_too_many_is_refused_where_it_drops() {
    List<FrameNode> nodes =
        List.of(
            new FrameNode("a", 0, 0, Support.PINNED),
            FrameNode.joint("b", 50, 0),
            new FrameNode("c", 100, 0, Support.PINNED));
    List<FrameMember> members =
        List.of(
            FrameMember.brace("ab", "a", "b", HEADER), FrameMember.brace("bc", "b", "c", HEADER));
    assertThatThrownBy(() -> new Frame(nodes, members))
        .hasMessage("the frame is a mechanism: nothing keeps node b from moving up or down (y)");
  }

  @Test
  void a_sloping_mechanism_is_refused_in_spite_of_rounding() {
    List<FrameNode> nodes =
        List.of(
            new FrameNode("a", 0, 0, Support.PINNED),
            FrameNode.joint("b", 33.3, 77.7),
            FrameNode.joint("c", 177.7, 97.1),
            new FrameNode("d", 144.1, 0.3, Support.PINNED));
    List<FrameMember> members =
        List.of(
            FrameMember.rigid("ab", "a", "b", POST),
            FrameMember.brace("bc", "b", "c", HEADER),
            FrameMember.rigid("cd", "c", "d", POST));
    assertThatThrownBy(() -> new Frame(nodes, members))
        .hasMessageStartingWith("the frame is a mechanism: nothing keeps node");
  }

  @Test
  void a_node_that_only_turns_is_named_so() {
    List<FrameNode> nodes =
        List.of(
            new FrameNode("a", 0, 0, Support.FIXED),
            new FrameNode("b", 50, 0, new Support(1e3, 1e3, 0)));
    List<FrameMember> members = List.of(new FrameMember("ab", "a", "b", HEADER, Hinges.BOTH));
    // Every end at b is hinged: its turning answers to nothing and is left out, not refused.
    FrameResult result = new Frame(nodes, members).solve(new FrameLoad.AtNode("b", 0, -100, 0));
    assertThat(result.movement("b").yIn()).isCloseTo(-0.1, within(1e-12));
    assertThat(result.movement("b").turnRad()).isZero();
    // Held up in the middle of nowhere: the beam turns about its one pin.
    List<FrameNode> pinned =
        List.of(new FrameNode("a", 0, 0, Support.PINNED), FrameNode.joint("b", 50, 0));
    assertThatThrownBy(() -> new Frame(pinned, List.of(FrameMember.rigid("ab", "a", "b", HEADER))))
        .hasMessage("the frame is a mechanism: nothing keeps node b from moving up or down (y)");
    List<FrameNode> held =
        List.of(new FrameNode("a", 0, 0, Support.FIXED), new FrameNode("b", 50, 0, Support.PINNED));
    FrameMember hinged = new FrameMember("ab", "a", "b", HEADER, Hinges.BOTH);
    assertThatThrownBy(
            () -> new Frame(held, List.of(hinged)).solve(new FrameLoad.AtNode("b", 0, 0, 5)))
        .hasMessage("moment at node b must have a rigid joint there: all are hinged");
  }

  @Test
  void a_loose_node_is_refused() {
    List<FrameNode> nodes =
        List.of(
            new FrameNode("a", 0, 0, Support.FIXED),
            FrameNode.joint("b", 50, 0),
            FrameNode.joint("lost", 70, 0));
    assertThatThrownBy(() -> new Frame(nodes, List.of(FrameMember.rigid("ab", "a", "b", HEADER))))
        .hasMessage("the frame is a mechanism: nothing keeps node lost from moving sideways (x)");
  }

  @Test
  void it_refuses_wrong_names_and_places() {
    Frame frame = portal(Support.FIXED, Hinges.NONE);
    assertThatThrownBy(() -> frame.solve(new FrameLoad.AtNode("top", 1, 0, 0)))
        .hasMessage("node top must be one of [left foot, left top, right foot, right top]");
    assertThatThrownBy(() -> frame.solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, 1)))
        .hasMessage("member beam must be one of [header, left post, right post]");
    assertThatThrownBy(() -> frame.solve(new FrameLoad.Point("header", Axes.GLOBAL, 150, 0, 1)))
        .hasMessage("point load at 150.0 in must be on member header, 0 to 144.0 in");
    assertThatThrownBy(
            () -> frame.solve(new FrameLoad.Uniform("header", Axes.GLOBAL, 5, 150, 0, 1)))
        .hasMessage("uniform load end at 150.0 in must be on member header, 0 to 144.0 in");
    assertThatThrownBy(() -> new FrameLoad.Uniform("header", Axes.GLOBAL, 5, 5, 0, 1))
        .hasMessage(
            "uniform load on member header from 5.0 in to 5.0 in must end beyond its start");
    assertThatThrownBy(() -> frame.solve().member("header").momentInLb(-1))
        .hasMessage("place -1.0 in must be on the member, 0 to 144.0 in");
    FrameNode a = FrameNode.joint("a", 0, 0);
    FrameNode twin = FrameNode.joint("b", 0, 0);
    assertThatThrownBy(() -> new Frame(List.of(a, a), List.of()))
        .hasMessage("node name a must be used only once");
    assertThatThrownBy(
            () -> new Frame(List.of(a, twin), List.of(FrameMember.rigid("ab", "a", "b", POST))))
        .hasMessage("member ab has no length: its two nodes stand at the same place");
    assertThatThrownBy(() -> new Frame(List.of(a), List.of()))
        .hasMessage("a frame must have at least one member");
  }

  @Test
  void it_refuses_what_is_no_stiffness() {
    assertThatThrownBy(() -> MemberStiffness.slender(0, 1))
        .hasMessage("axial stiffness 0.0 lb must be above zero and finite");
    assertThatThrownBy(() -> new MemberStiffness(1, 1, 0))
        .hasMessage("shear stiffness 0.0 must be above zero");
    assertThatThrownBy(() -> new Support(-1, 0, 0))
        .hasMessage("sideways support stiffness -1.0 must be zero or more");
    assertThatThrownBy(() -> new Support(0, 0, Double.NaN))
        .hasMessage("turning support stiffness NaN must be zero or more");
    assertThatThrownBy(() -> new Support(0, -1, 0))
        .hasMessage("upright support stiffness -1.0 must be zero or more");
  }

  @Test
  void a_section_gives_its_stiffness_on_edge_and_flatwise() {
    Section section = new Section(1.5, 9.25, 2);
    MemberStiffness edge = MemberStiffness.onEdge(section, 1.6e6);
    MemberStiffness flat = MemberStiffness.flatwise(section, 1.6e6);
    assertThat(edge.axialLb()).isEqualTo(1.6e6 * section.areaIn2());
    assertThat(edge.bendingLbIn2()).isEqualTo(1.6e6 * section.strongSecondMomentIn4());
    assertThat(flat.axialLb()).isEqualTo(1.6e6 * section.areaIn2());
    assertThat(flat.bendingLbIn2()).isEqualTo(1.6e6 * section.weakSecondMomentIn4());
  }

  @Test
  void cases_combine_as_if_solved_together() {
    Frame frame = portal(Support.FIXED, Hinges.NONE);
    FrameLoad wind = FrameLoad.Uniform.whole("left post", Axes.GLOBAL, 3, 0);
    FrameLoad person = new FrameLoad.Point("header", Axes.GLOBAL, 40, 0, -200);
    List<FrameResult> cases = frame.solve(List.of(List.of(wind), List.of(person)));
    FrameResult combined = FrameResult.combine(cases, 0.6, 2);
    FrameResult direct =
        frame.solve(
            FrameLoad.Uniform.whole("left post", Axes.GLOBAL, 1.8, 0),
            new FrameLoad.Point("header", Axes.GLOBAL, 40, 0, -400));
    assertThat(combined.movement("left top").xIn())
        .isCloseTo(direct.movement("left top").xIn(), within(1e-12));
    assertThat(combined.reaction("left foot").momentInLb())
        .isCloseTo(direct.reaction("left foot").momentInLb(), within(1e-6));
    assertThat(combined.member("header").largestMoment().amount())
        .isCloseTo(direct.member("header").largestMoment().amount(), within(1e-6));
    assertThat(combined.member("left post").mostCompression().amount())
        .isCloseTo(direct.member("left post").mostCompression().amount(), within(1e-6));
    for (String name : List.of("left post", "header", "right post")) {
      MemberResult sum = combined.member(name);
      MemberResult whole = direct.member(name);
      assertThat(sum.axialLb(17)).isCloseTo(whole.axialLb(17), within(1e-6));
      assertThat(sum.shearLb(17)).isCloseTo(whole.shearLb(17), within(1e-6)).isNotZero();
      assertThat(sum.mostTension().amount()).isCloseTo(whole.mostTension().amount(), within(1e-6));
      assertThat(sum.sagIn(17)).isCloseTo(whole.sagIn(17), within(1e-9));
    }
    assertThat(combined.member("left post").endForces().endShearLb())
        .isCloseTo(direct.member("left post").endForces().endShearLb(), within(1e-6));
    assertThatThrownBy(() -> FrameResult.combine(List.of(cases.get(0), direct), 1, 1))
        .hasMessage("case 2 must come from the same call of solve as the first");
    assertThatThrownBy(() -> FrameResult.combine(cases, 1))
        .hasMessage("2 cases and 1 factors must be as many, 1 or more");
  }

  @Test
  void one_member_with_its_load_inside_equals_two_members_joined_at_the_load() {
    Frame whole = portal(Support.FIXED, Hinges.NONE);
    Frame parted =
        new Frame(
            List.of(
                new FrameNode("left foot", 0, 0, Support.FIXED),
                FrameNode.joint("left top", 0, 96),
                FrameNode.joint("middle", 60, 96),
                FrameNode.joint("right top", 144, 96),
                new FrameNode("right foot", 144, 0, Support.FIXED)),
            List.of(
                FrameMember.rigid("left post", "left foot", "left top", POST),
                FrameMember.rigid("left half", "left top", "middle", HEADER),
                FrameMember.rigid("right half", "middle", "right top", HEADER),
                FrameMember.rigid("right post", "right foot", "right top", POST)));
    FrameResult one = whole.solve(new FrameLoad.Point("header", Axes.GLOBAL, 60, 50, -300));
    FrameResult two = parted.solve(new FrameLoad.AtNode("middle", 50, -300, 0));
    MemberResult header = one.member("header");
    assertThat(header.movementIn(60)).isCloseTo(two.movement("middle").yIn(), within(1e-12));
    assertThat(header.momentInLb(20))
        .isCloseTo(two.member("left half").momentInLb(20), within(1e-6));
    assertThat(header.shearLb(100)).isCloseTo(two.member("right half").shearLb(40), within(1e-6));
    assertThat(header.axialLb(20)).isCloseTo(two.member("left half").axialLb(20), within(1e-6));
    assertThat(header.axialLb(100)).isCloseTo(two.member("right half").axialLb(40), within(1e-6));
    assertThat(header.largestShear().amount())
        .isCloseTo(two.member("left half").largestShear().amount(), within(1e-6));
    assertThat(header.stationsIn()).contains(60).hasSameSizeAs(header.momentsInLb());
  }

  /** A walk's row of posts with headers between them, its nodes named in a mixed-up order. */
  private static Frame row(int bays) {
    List<FrameNode> nodes = new ArrayList<>();
    List<FrameMember> members = new ArrayList<>();
    for (int i = 0; i <= bays; i++) {
      nodes.add(new FrameNode("foot " + i, 96 * i, 0, Support.FIXED));
      nodes.add(FrameNode.joint("top " + i, 96 * i, 84));
      members.add(FrameMember.rigid("post " + i, "foot " + i, "top " + i, POST));
      if (i > 0) {
        members.add(FrameMember.rigid("header " + i, "top " + (i - 1), "top " + i, HEADER));
      }
    }
    Collections.shuffle(nodes, new Random(7));
    return new Frame(nodes, members);
  }

  @Test
  void a_row_twice_as_long_takes_twice_the_memory_in_whatever_order_its_nodes_come() {
    long hundred = row(100).stiffness().entryCount();
    long twoHundred = row(200).stiffness().entryCount();
    assertThat(twoHundred).isLessThanOrEqualTo(2 * hundred);
    // 3 freedoms a post top, each tied to its neighbours only: at most 6 numbers a row.
    assertThat(hundred).isLessThanOrEqualTo(3 * 101 * 6);
  }

  /** A ladder on its end: posts on top of each other with a rung at every joint. */
  private static Frame tower(int storeys) {
    List<FrameNode> nodes = new ArrayList<>();
    List<FrameMember> members = new ArrayList<>();
    for (int i = 0; i <= storeys; i++) {
      Support foot = i == 0 ? Support.FIXED : Support.FREE;
      nodes.add(new FrameNode("left " + i, 0, 40 * i, foot));
      nodes.add(new FrameNode("right " + i, 30, 40 * i, foot));
      members.add(FrameMember.rigid("rung " + i, "left " + i, "right " + i, HEADER));
      if (i > 0) {
        members.add(FrameMember.rigid("l " + i, "left " + (i - 1), "left " + i, POST));
        members.add(FrameMember.rigid("r " + i, "right " + (i - 1), "right " + i, POST));
      }
    }
    Collections.shuffle(nodes, new Random(7));
    return new Frame(nodes, members);
  }

  @Test
  void a_frame_that_goes_up_is_numbered_upwards() {
    long fifty = tower(50).stiffness().entryCount();
    long hundred = tower(100).stiffness().entryCount();
    assertThat(tower(150).stiffness().entryCount() - hundred).isEqualTo(hundred - fifty);
    // 6 freedoms a storey, each tied to its own and the next below: at most 12 numbers a row.
    assertThat(fifty).isLessThanOrEqualTo(6 * 50 * 12);
  }

  @Test
  void a_push_on_a_long_row_dies_out_along_it() {
    FrameResult result = row(200).solve(new FrameLoad.AtNode("top 100", 0, 0, 1000));
    double near = Math.abs(result.movement("top 100").turnRad());
    double far = Math.abs(result.movement("top 110").turnRad());
    assertThat(near).isGreaterThan(1e-6);
    assertThat(far).isLessThan(0.01 * near);
    assertThat(result.movement("top 90").turnRad())
        .isCloseTo(result.movement("top 110").turnRad(), within(1e-12));
  }
}
