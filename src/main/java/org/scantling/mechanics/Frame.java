package org.scantling.mechanics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How do posts, headers and braces in one plane share their loads, and how far do they move?
 *
 * <p>Straight prismatic members, small movements (first order: for the sway added by vertical load
 * see {@link Sway}), ends joined rigidly or hinged, nodes free, held or on springs. The stiffness
 * is taken apart once, when the frame is made, and serves every load case; the work grows in line
 * with the length of a long frame.
 *
 * <p>Source: direct stiffness method, any text on structural analysis, e.g. Weaver and Gere, Matrix
 * Analysis of Framed Structures.
 *
 * <p>Worked number: a post fixed at its foot, 5.5 × 5.5, 108 in, E 1.6e6 psi, with 150 lb sideways
 * at its top moves H·L³/3EI = 0.516 in there.
 */
public final class Frame {
  private final List<FrameNode> nodes;
  private final List<FrameElement> elements;
  private final Map<String, Integer> nodeNumbers = new HashMap<>();
  private final Map<String, Integer> memberNumbers = new HashMap<>();
  private final Freedoms freedoms;
  private final ProfileFactor stiffness;

  /**
   * A frame ready for any number of load cases.
   *
   * @param nodes its joints, ends and supports, with unique names
   * @param members the pieces between them, with unique names
   * @throws IllegalArgumentException if a name is unknown or used twice, a member has no length, or
   *     the frame is a mechanism; the message then names a node that nothing holds, and the
   *     direction
   */
  public Frame(List<FrameNode> nodes, List<FrameMember> members) {
    this.nodes = List.copyOf(nodes);
    for (FrameNode node : nodes) {
      number(nodeNumbers, "node", node.name());
    }
    List<FrameElement> made = new ArrayList<>();
    for (FrameMember member : members) {
      number(memberNumbers, "member", member.name());
      made.add(element(member));
    }
    if (made.isEmpty()) {
      throw new IllegalArgumentException("a frame must have at least one member");
    }
    this.elements = List.copyOf(made);
    this.freedoms = new Freedoms(this.nodes, elements);
    this.stiffness = factor();
  }

  private static void number(Map<String, Integer> numbers, String kind, String name) {
    if (numbers.putIfAbsent(name, numbers.size()) != null) {
      throw new IllegalArgumentException(kind + " name " + name + " must be used only once");
    }
  }

  static int find(Map<String, Integer> numbers, String kind, String name) {
    Integer number = numbers.get(name);
    if (number == null) {
      throw new IllegalArgumentException(
          kind + " " + name + " must be one of " + numbers.keySet().stream().sorted().toList());
    }
    return number;
  }

  private FrameElement element(FrameMember member) {
    int start = find(nodeNumbers, "node", member.startNode());
    int end = find(nodeNumbers, "node", member.endNode());
    double runIn = nodes.get(end).xIn() - nodes.get(start).xIn();
    double riseIn = nodes.get(end).yIn() - nodes.get(start).yIn();
    return new FrameElement(member, start, end, runIn, riseIn);
  }

  private ProfileFactor factor() {
    StiffnessRows rows = new StiffnessRows(freedoms.count());
    for (FrameElement element : elements) {
      rows.reserve(freedoms.of(element));
    }
    for (FrameElement element : elements) {
      rows.add(freedoms.of(element), element.stiffness());
    }
    for (int node = 0; node < nodes.size(); node++) {
      for (int direction = 0; direction < 3; direction++) {
        int freedom = freedoms.number(node, direction);
        rows.addSpring(freedom, nodes.get(node).support().stiffness(direction));
      }
    }
    try {
      return new ProfileFactor(rows.toArray());
    } catch (ProfileFactor.SingularException loose) {
      throw new IllegalArgumentException(
          "the frame is a mechanism: " + freedoms.looseness(loose.shape()), loose);
    }
  }

  /**
   * One load case by itself.
   *
   * @throws IllegalArgumentException if a load names no node or member, or lies off its member
   */
  public FrameResult solve(FrameLoad... loads) {
    return solve(List.of(List.of(loads))).get(0);
  }

  /**
   * Several load cases over the same stations, so that they can be combined.
   *
   * @param cases each the loads that act together
   * @return a result for each case, in the same order
   * @throws IllegalArgumentException if a load names no node or member, or lies off its member
   */
  public List<FrameResult> solve(List<List<FrameLoad>> cases) {
    FrameCases laid = new FrameCases(this, cases);
    List<FrameResult> results = new ArrayList<>(cases.size());
    for (List<FrameLoad> loads : cases) {
      results.add(new FrameSolution(this, laid, loads).solve());
    }
    return List.copyOf(results);
  }

  List<FrameNode> nodes() {
    return nodes;
  }

  List<FrameElement> elements() {
    return elements;
  }

  Freedoms freedoms() {
    return freedoms;
  }

  ProfileFactor stiffness() {
    return stiffness;
  }

  int node(String name) {
    return find(nodeNumbers, "node", name);
  }

  int member(String name) {
    return find(memberNumbers, "member", name);
  }
}
