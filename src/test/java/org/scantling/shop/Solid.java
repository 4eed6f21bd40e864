package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Point;

/**
 * A piece as the wood it is, its ends cut as listed, its notches filled: for looking whether two
 * pieces are in the same place. Crossbeams are taken without their shaped tails.
 */
record Solid(String name, List<double[]> corners, List<double[]> edges) {
  private static final double NOTHING = 1e-9;

  /**
   * @param fallRatio of the headers, with which crossbeams lean
   */
  static Solid of(Piece piece, Place place, double fallRatio) {
    Shape shape = piece.shape();
    double[] along = unit(minus(of(place.last()), of(place.first())));
    double[] up = upward(shape, along, fallRatio);
    double[] aside = cross(along, up);
    double lengthIn = place.first().toIn(place.last());
    // A picket stands edge on: its thickness lies along the walk, its width across it.
    boolean edgeOn = shape.role().equals("picket");
    double halfIn = (edgeOn ? shape.breadthIn() : shape.depthIn()) / 2;
    double asideIn = (edgeOn ? shape.depthIn() : shape.breadthIn()) / 2;
    List<double[]> corners = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      for (int edge = -1; edge <= 1; edge += 2) {
        double fromIn = setBackIn(shape.first(), edge);
        double toIn = lengthIn - setBackIn(shape.last(), edge);
        for (double atIn : new double[] {fromIn, toIn}) {
          corners.add(
              plus(
                  of(place.first()),
                  plus(
                      times(along, atIn),
                      plus(times(up, edge * halfIn), times(aside, side * asideIn)))));
        }
      }
    }
    double[] first = minus(corners.get(2), corners.get(0));
    double[] last = minus(corners.get(3), corners.get(1));
    return new Solid(
        piece.mark() + " at " + place.first(), corners, List.of(along, aside, first, last));
  }

  /** How far in one goes into the other at least; 0 or less where they are apart. */
  double intoIn(Solid other) {
    double leastIn = Double.POSITIVE_INFINITY;
    for (double[] axis : axes(other)) {
      double thisLow = low(axis);
      double thisHigh = -low(times(axis, -1));
      double otherLow = other.low(axis);
      double otherHigh = -other.low(times(axis, -1));
      leastIn = Math.min(leastIn, Math.min(thisHigh - otherLow, otherHigh - thisLow));
    }
    return leastIn;
  }

  private List<double[]> axes(Solid other) {
    List<double[]> axes = new ArrayList<>(faces());
    axes.addAll(other.faces());
    for (double[] one : edges) {
      for (double[] two : other.edges) {
        add(axes, cross(one, two));
      }
    }
    return axes;
  }

  private List<double[]> faces() {
    List<double[]> faces = new ArrayList<>();
    add(faces, edges.get(1));
    for (int i : new int[] {0, 2, 3}) {
      add(faces, cross(edges.get(1), edges.get(i)));
    }
    return faces;
  }

  private static void add(List<double[]> axes, double[] axis) {
    if (Math.sqrt(dot(axis, axis)) > NOTHING) {
      axes.add(unit(axis));
    }
  }

  private double low(double[] axis) {
    return corners.stream().mapToDouble(corner -> dot(corner, axis)).min().orElseThrow();
  }

  /**
   * @param edge 1 for the upper one
   */
  private static double setBackIn(EndCut end, int edge) {
    if (!(end instanceof EndCut.Sloping sloping)) {
      return 0;
    }
    boolean longLower =
        sloping.longEdge().equals("the lower edge")
            || sloping.longEdge().equals("the edge away from the corner")
            || sloping.longEdge().endsWith("toward the first post");
    return longLower == edge > 0 ? sloping.setBackIn() : 0;
  }

  private static double[] upward(Shape shape, double[] along, double fallRatio) {
    if (shape.role().equals("crossbeam")) {
      return unit(new double[] {fallRatio, 0, 1});
    }
    if (Math.abs(along[2]) > 1 - NOTHING) {
      return new double[] {1, 0, 0};
    }
    double[] plumb = {0, 0, 1};
    return unit(minus(plumb, times(along, dot(plumb, along))));
  }

  private static double[] of(Point point) {
    return new double[] {point.alongIn(), point.acrossIn(), point.upIn()};
  }

  private static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  private static double[] minus(double[] a, double[] b) {
    return plus(a, times(b, -1));
  }

  private static double[] times(double[] a, double by) {
    return new double[] {a[0] * by, a[1] * by, a[2] * by};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] unit(double[] a) {
    return times(a, 1 / Math.sqrt(dot(a, a)));
  }
}
