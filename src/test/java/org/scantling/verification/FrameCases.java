package org.scantling.verification;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.StreamSupport;
import org.scantling.mechanics.Axes;
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
 * The plane frames that a second, general-purpose program has solved: geometry and loads stand in
 * mechanics-frames.json, its answers are rows of the pack.
 */
final class FrameCases {
  private static final double HELD = Double.POSITIVE_INFINITY;

  private static final Map<String, JsonNode> CASES = read();
  private static final Map<String, FrameResult> SOLVED = new ConcurrentHashMap<>();

  static final Map<String, ToDoubleFunction<PackRow>> QUANTITIES =
      Map.ofEntries(
          entry("frame movement", FrameCases::movement),
          entry("frame reaction", FrameCases::reaction),
          entry("frame end force", FrameCases::endForce));

  private FrameCases() {}

  private static Map<String, JsonNode> read() {
    JsonNode file = JsonMapper.shared().readTree(Pack.file("mechanics-frames.json").toFile());
    Map<String, JsonNode> cases = new TreeMap<>();
    StreamSupport.stream(file.get("cases").spliterator(), false)
        .forEach(given -> cases.put(given.get("name").asString(), given));
    return cases;
  }

  static JsonNode named(String name) {
    return CASES.get(name);
  }

  private static FrameResult result(PackRow row) {
    return SOLVED.computeIfAbsent(row.text("case"), name -> solved(named(name)));
  }

  static FrameResult solved(JsonNode given) {
    return frame(given).solve(loads(given));
  }

  private static double movement(PackRow row) {
    NodeMovement movement = result(row).movement(row.text("at"));
    return switch (row.text("item")) {
      case "x" -> movement.xIn();
      case "y" -> movement.yIn();
      case "turn" -> movement.turnRad();
      default -> throw new IllegalStateException(row + " asks for no movement there is");
    };
  }

  private static double reaction(PackRow row) {
    NodeForce force = result(row).reaction(row.text("at"));
    return switch (row.text("item")) {
      case "x" -> force.xLb();
      case "y" -> force.yLb();
      case "moment" -> force.momentInLb();
      default -> throw new IllegalStateException(row + " asks for no reaction there is");
    };
  }

  private static double endForce(PackRow row) {
    MemberEndForces force = result(row).member(row.text("at")).endForces();
    return switch (row.text("item")) {
      case "start axial" -> force.startAxialLb();
      case "start shear" -> force.startShearLb();
      case "start moment" -> force.startMomentInLb();
      case "end axial" -> force.endAxialLb();
      case "end shear" -> force.endShearLb();
      case "end moment" -> force.endMomentInLb();
      default -> throw new IllegalStateException(row + " asks for no end force there is");
    };
  }

  private static Frame frame(JsonNode given) {
    List<FrameNode> nodes = new ArrayList<>();
    for (var node : given.get("nodes").properties()) {
      JsonNode at = node.getValue();
      Support support = support(given.get("supports").get(node.getKey()));
      nodes.add(new FrameNode(node.getKey(), at.get(0).asDouble(), at.get(1).asDouble(), support));
    }
    List<FrameMember> members = new ArrayList<>();
    for (var member : given.get("members").properties()) {
      members.add(member(member.getKey(), member.getValue()));
    }
    return new Frame(nodes, members);
  }

  private static FrameMember member(String name, JsonNode given) {
    double modulus = given.get("modulusPsi").asDouble();
    MemberStiffness stiffness =
        MemberStiffness.slender(
            modulus * given.get("areaIn2").asDouble(),
            modulus * given.get("secondMomentIn4").asDouble());
    Hinges hinges = given.get("brace").asBoolean() ? Hinges.BOTH : Hinges.NONE;
    return new FrameMember(
        name, given.get("start").asString(), given.get("end").asString(), stiffness, hinges);
  }

  private static Support support(JsonNode held) {
    return held == null ? Support.FREE : new Support(held(held, 0), held(held, 1), held(held, 2));
  }

  /** 1 for held, any other number for a spring of that stiffness. */
  private static double held(JsonNode held, int direction) {
    double given = held.get(direction).asDouble();
    return given == 1 ? HELD : given;
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
