package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.scantling.mechanics.Axes;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.Frame;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameMember;
import org.scantling.mechanics.FrameNode;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.Hinges;
import org.scantling.mechanics.MemberEndForces;
import org.scantling.mechanics.MemberStiffness;
import org.scantling.mechanics.NodeForce;
import org.scantling.mechanics.NodeMovement;
import org.scantling.mechanics.Support;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Plane frames against a general-purpose finite-element program (CalculiX 2.20 / Z88 13); inputs
 * and expected values in verification/mechanics-frames.json.
 */
class MechanicsFrameReferenceTest {
  /** The values are given to 8 digits; this much of the largest of each kind in the case. */
  private static final double TOLERANCE_RATIO = 1e-5;

  private static final double HELD = Double.POSITIVE_INFINITY;

  private static JsonNode cases() {
    try (InputStream in =
        MechanicsFrameReferenceTest.class.getResourceAsStream(
            "/verification/mechanics-frames.json")) {
      return JsonMapper.shared().readTree(in).get("cases");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void all_six_plane_cases_are_there() {
    assertThat(cases().size()).isEqualTo(6);
  }

  @TestFactory
  Stream<DynamicTest> it_agrees_with_a_finite_element_program() {
    return StreamSupport.stream(cases().spliterator(), false)
        .map(given -> DynamicTest.dynamicTest(given.get("name").asString(), () -> check(given)));
  }

  private static void check(JsonNode given) {
    FrameResult result = frame(given).solve(loads(given));
    SoftAssertions softly = new SoftAssertions();
    for (var node : given.get("movements").properties()) {
      NodeMovement m = result.movement(node.getKey());
      double[] actual = {m.xIn(), m.yIn(), m.turnRad()};
      compare(softly, "movement of " + node.getKey(), actual, node.getValue(), given, "movements");
    }
    for (var node : given.get("reactions").properties()) {
      NodeForce f = result.reaction(node.getKey());
      double[] actual = {f.xLb(), f.yLb(), f.momentInLb()};
      compare(softly, "reaction at " + node.getKey(), actual, node.getValue(), given, "reactions");
    }
    for (var member : given.get("endForces").properties()) {
      MemberEndForces f = result.member(member.getKey()).endForces();
      double[] actual = {
        f.startAxialLb(),
        f.startShearLb(),
        f.startMomentInLb(),
        f.endAxialLb(),
        f.endShearLb(),
        f.endMomentInLb()
      };
      compare(softly, "ends of " + member.getKey(), actual, member.getValue(), given, "endForces");
    }
    softly.assertAll();
  }

  @TestFactory
  Stream<DynamicTest> the_beam_front_gives_the_same_headers() {
    return Stream.of("simple_header", "continuous_overhangs")
        .map(name -> DynamicTest.dynamicTest(name, () -> checkBeam(named(name))));
  }

  private static JsonNode named(String name) {
    return StreamSupport.stream(cases().spliterator(), false)
        .filter(given -> given.get("name").asString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static void checkBeam(JsonNode given) {
    double lengthIn = 0;
    for (var node : given.get("nodes").properties()) {
      lengthIn = Math.max(lengthIn, placeIn(given, node.getKey()));
    }
    double[] supportsIn =
        given.get("supports").properties().stream()
            .mapToDouble(support -> placeIn(given, support.getKey()))
            .toArray();
    List<BeamLoad> loads = new ArrayList<>();
    for (JsonNode load : given.get("nodalLoads")) {
      double at = placeIn(given, load.get("node").asString());
      loads.add(new BeamLoad.Point(at, -load.get("load").get(1).asDouble()));
    }
    for (JsonNode load : given.get("memberLoads")) {
      JsonNode member = given.get("members").get(load.get("member").asString());
      double from = placeIn(given, member.get("start").asString());
      double to = placeIn(given, member.get("end").asString());
      loads.add(new BeamLoad.Uniform(from, to, -load.get("perIn").get(1).asDouble()));
    }
    ContinuousBeam beam = ContinuousBeam.of(lengthIn, supportsIn);
    compareBeam(given, beam.solve(loads.toArray(BeamLoad[]::new)));
  }

  private static void compareBeam(JsonNode given, BeamResult result) {
    JsonNode member = given.get("members").get("1");
    double bending = member.get("modulusPsi").asDouble() * member.get("secondMomentIn4").asDouble();
    SoftAssertions softly = new SoftAssertions();
    for (var node : given.get("movements").properties()) {
      softly
          .assertThat(-result.deflectionLbIn3(placeIn(given, node.getKey())) / bending)
          .as("movement of " + node.getKey())
          .isCloseTo(node.getValue().get(1).asDouble(), Offset.offset(1e-8));
    }
    int support = 0;
    for (var node : given.get("reactions").properties()) {
      softly
          .assertThat(result.reactionLb(support++))
          .as("reaction at " + node.getKey())
          .isCloseTo(node.getValue().get(1).asDouble(), Offset.offset(1e-3));
    }
    for (var ends : given.get("endForces").properties()) {
      String start = given.get("members").get(ends.getKey()).get("start").asString();
      softly
          .assertThat(result.momentInLb(placeIn(given, start)))
          .as("moment at the start of " + ends.getKey())
          .isCloseTo(-ends.getValue().get(2).asDouble(), Offset.offset(1e-2));
      softly
          .assertThat(result.shearLb(placeIn(given, start)))
          .as("shear at the start of " + ends.getKey())
          .isCloseTo(ends.getValue().get(1).asDouble(), Offset.offset(1e-3));
    }
    softly.assertAll();
  }

  private static double placeIn(JsonNode given, String node) {
    return given.get("nodes").get(node).get(0).asDouble();
  }

  private static void compare(
      SoftAssertions softly,
      String what,
      double[] actual,
      JsonNode expected,
      JsonNode given,
      String kind) {
    for (int i = 0; i < actual.length; i++) {
      double slack = TOLERANCE_RATIO * largest(given.get(kind), i % 3 == 2) + 1e-9;
      softly
          .assertThat(actual[i])
          .as(what + ", item " + i)
          .isCloseTo(expected.get(i).asDouble(), Offset.offset(slack));
    }
  }

  /** The largest force (or shift) of the case, or its largest moment (or turn). */
  private static double largest(JsonNode values, boolean third) {
    double largest = 0;
    for (var one : values.properties()) {
      for (int i = 0; i < one.getValue().size(); i++) {
        if ((i % 3 == 2) == third) {
          largest = Math.max(largest, Math.abs(one.getValue().get(i).asDouble()));
        }
      }
    }
    return largest;
  }

  private static Frame frame(JsonNode given) {
    List<FrameNode> nodes = new ArrayList<>();
    for (var node : given.get("nodes").properties()) {
      JsonNode at = node.getValue();
      nodes.add(
          new FrameNode(
              node.getKey(),
              at.get(0).asDouble(),
              at.get(1).asDouble(),
              support(given.get("supports").get(node.getKey()))));
    }
    List<FrameMember> members = new ArrayList<>();
    for (var member : given.get("members").properties()) {
      JsonNode m = member.getValue();
      double modulus = m.get("modulusPsi").asDouble();
      MemberStiffness stiffness =
          MemberStiffness.slender(
              modulus * m.get("areaIn2").asDouble(), modulus * m.get("secondMomentIn4").asDouble());
      Hinges hinges = m.get("brace").asBoolean() ? Hinges.BOTH : Hinges.NONE;
      members.add(
          new FrameMember(
              member.getKey(),
              m.get("start").asString(),
              m.get("end").asString(),
              stiffness,
              hinges));
    }
    return new Frame(nodes, members);
  }

  private static Support support(JsonNode held) {
    return held == null
        ? Support.FREE
        : new Support(
            held.get(0).asInt() == 1 ? HELD : 0,
            held.get(1).asInt() == 1 ? HELD : 0,
            held.get(2).asInt() == 1 ? HELD : 0);
  }

  private static FrameLoad[] loads(JsonNode given) {
    List<FrameLoad> loads = new ArrayList<>();
    for (JsonNode load : given.get("nodalLoads")) {
      JsonNode l = load.get("load");
      loads.add(
          new FrameLoad.AtNode(
              load.get("node").asString(),
              l.get(0).asDouble(),
              l.get(1).asDouble(),
              l.get(2).asDouble()));
    }
    for (JsonNode load : given.get("memberLoads")) {
      loads.add(
          FrameLoad.Uniform.whole(
              load.get("member").asString(),
              Axes.GLOBAL,
              load.get("perIn").get(0).asDouble(),
              load.get("perIn").get(1).asDouble()));
    }
    return loads.toArray(FrameLoad[]::new);
  }
}
