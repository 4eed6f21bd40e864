package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.FrameResult;
import tools.jackson.databind.JsonNode;

/**
 * The beam solver gives what the frame solver gives, which the pack holds to the second program.
 */
class BeamAgainstFrameTest {
  private static final Offset<Double> NEAR_IN = Offset.offset(1e-9);
  private static final Offset<Double> NEAR_LB = Offset.offset(1e-6);
  private static final Offset<Double> NEAR_IN_LB = Offset.offset(1e-4);

  @ParameterizedTest
  @ValueSource(strings = {"simple_header", "continuous_overhangs"})
  void a_header_solved_as_a_beam_is_the_header_solved_as_a_frame(String name) {
    JsonNode given = FrameCases.named(name);
    FrameResult frame = FrameCases.solved(given);
    BeamResult beam = beam(given).solve(loads(given).toArray(BeamLoad[]::new));
    JsonNode member = given.get("members").get("1");
    double bending = member.get("modulusPsi").asDouble() * member.get("secondMomentIn4").asDouble();
    SoftAssertions softly = new SoftAssertions();
    for (var node : given.get("nodes").properties()) {
      softly
          .assertThat(-beam.deflectionLbIn3(placeIn(given, node.getKey())) / bending)
          .as("movement of " + node.getKey())
          .isCloseTo(frame.movement(node.getKey()).yIn(), NEAR_IN);
    }
    int support = 0;
    for (var node : given.get("supports").properties()) {
      softly
          .assertThat(beam.reactionLb(support++))
          .as("reaction at " + node.getKey())
          .isCloseTo(frame.reaction(node.getKey()).yLb(), NEAR_LB);
    }
    for (var ends : given.get("members").properties()) {
      double start = placeIn(given, ends.getValue().get("start").asString());
      var forces = frame.member(ends.getKey()).endForces();
      softly
          .assertThat(beam.momentInLb(start))
          .as("moment at the start of " + ends.getKey())
          .isCloseTo(-forces.startMomentInLb(), NEAR_IN_LB);
      softly
          .assertThat(beam.shearLb(start))
          .as("shear at the start of " + ends.getKey())
          .isCloseTo(forces.startShearLb(), NEAR_LB);
    }
    softly.assertAll();
    assertThat(support).isGreaterThanOrEqualTo(2);
  }

  private static ContinuousBeam beam(JsonNode given) {
    double lengthIn = 0;
    for (var node : given.get("nodes").properties()) {
      lengthIn = Math.max(lengthIn, placeIn(given, node.getKey()));
    }
    double[] supportsIn =
        given.get("supports").properties().stream()
            .mapToDouble(support -> placeIn(given, support.getKey()))
            .toArray();
    return ContinuousBeam.of(lengthIn, supportsIn);
  }

  private static List<BeamLoad> loads(JsonNode given) {
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
    return loads;
  }

  private static double placeIn(JsonNode given, String node) {
    return given.get("nodes").get(node).get(0).asDouble();
  }
}
