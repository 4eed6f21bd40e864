package org.scantling.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which movements of a frame's nodes are unknown, numbered along its longer side so that the
 * stiffness matrix stays narrow however long the frame is.
 */
final class Freedoms {
  /** Number of a movement that is held, or that nothing answers to. */
  static final int NONE = -1;

  private static final String[] DIRECTIONS = {"moving sideways (x)", "moving up or down (y)"};
  private static final double EQUAL_RATIO = 1 - 1e-6;
  private static final double NEGLIGIBLE_RATIO = 1e-9;

  private final List<FrameNode> nodes;
  private final int[] numbers;
  private final int count;

  Freedoms(List<FrameNode> nodes, List<FrameElement> elements) {
    this.nodes = nodes;
    this.numbers = new int[3 * nodes.size()];
    boolean[] turns = new boolean[nodes.size()];
    for (FrameElement element : elements) {
      turns[element.startNode] |= element.holdsTurning(element.startNode);
      turns[element.endNode] |= element.holdsTurning(element.endNode);
    }
    Arrays.fill(numbers, NONE);
    int next = 0;
    for (int node : alongLongerSide(nodes)) {
      Support support = nodes.get(node).support();
      for (int direction = 0; direction < 3; direction++) {
        double held = support.stiffness(direction);
        boolean answered = direction < 2 || turns[node] || held > 0;
        if (answered && !Double.isInfinite(held)) {
          numbers[3 * node + direction] = next++;
        }
      }
    }
    this.count = next;
  }

  private static List<Integer> alongLongerSide(List<FrameNode> nodes) {
    double wide = spread(nodes.stream().mapToDouble(FrameNode::xIn).toArray());
    double high = spread(nodes.stream().mapToDouble(FrameNode::yIn).toArray());
    Comparator<FrameNode> byX = Comparator.comparingDouble(FrameNode::xIn);
    Comparator<FrameNode> byY = Comparator.comparingDouble(FrameNode::yIn);
    Comparator<FrameNode> order = wide >= high ? byX.thenComparing(byY) : byY.thenComparing(byX);
    List<Integer> indices = new ArrayList<>();
    for (int node = 0; node < nodes.size(); node++) {
      indices.add(node);
    }
    indices.sort(Comparator.comparing(nodes::get, order));
    return indices;
  }

  private static double spread(double[] places) {
    double low = places[0];
    double high = places[0];
    for (double place : places) {
      low = Math.min(low, place);
      high = Math.max(high, place);
    }
    return high - low;
  }

  int count() {
    return count;
  }

  int number(int node, int direction) {
    return numbers[3 * node + direction];
  }

  /** Numbers of a member's six end freedoms. */
  int[] of(FrameElement element) {
    int[] six = Arrays.copyOfRange(numbers, 3 * element.startNode, 3 * element.startNode + 6);
    System.arraycopy(numbers, 3 * element.endNode, six, 3, 3);
    return six;
  }

  /** Which node is loose, and in which direction, in a movement that meets no resistance. */
  String looseness(double[] shape) {
    double shift = largest(shape, 0, 2);
    double turn = largest(shape, 2, 3);
    boolean turnsOnly = shift <= NEGLIGIBLE_RATIO * turn;
    int from = turnsOnly ? 2 : 0;
    int to = turnsOnly ? 3 : 2;
    double enough = EQUAL_RATIO * (turnsOnly ? turn : shift);
    for (int node = 0; node < nodes.size(); node++) {
      for (int direction = from; direction < to; direction++) {
        if (size(shape, node, direction) >= enough) {
          String way = direction < 2 ? DIRECTIONS[direction] : "turning";
          return "nothing keeps node " + nodes.get(node).name() + " from " + way;
        }
      }
    }
    throw new IllegalStateException("a loose shape moves no node");
  }

  private double largest(double[] shape, int from, int to) {
    double largest = 0;
    for (int node = 0; node < nodes.size(); node++) {
      for (int direction = from; direction < to; direction++) {
        largest = Math.max(largest, size(shape, node, direction));
      }
    }
    return largest;
  }

  private double size(double[] shape, int node, int direction) {
    int number = number(node, direction);
    return number == NONE || number >= shape.length ? 0 : Math.abs(shape[number]);
  }
}
