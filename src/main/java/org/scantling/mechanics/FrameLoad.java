package org.scantling.mechanics;

import org.scantling.quantity.Require;

/**
 * One load on a frame; positive along the axes (so weight is negative y), turning anticlockwise.
 */
public sealed interface FrameLoad {

  /**
   * A load at a node, in global axes.
   *
   * @param node name of the node
   * @param xLb force sideways, lb
   * @param yLb force upwards, lb
   * @param momentInLb moment, anticlockwise, in·lb
   */
  record AtNode(String node, double xLb, double yLb, double momentInLb) implements FrameLoad {
    public AtNode {
      Require.finite("x force at node " + node, xLb, "lb");
      Require.finite("y force at node " + node, yLb, "lb");
      Require.finite("moment at node " + node, momentInLb, "in·lb");
    }
  }

  /**
   * An even load along part of a member.
   *
   * @param member name of the member
   * @param axes whose directions x and y are
   * @param fromIn start, inches from the member's start
   * @param toIn end, inches from the member's start; infinite means to its end
   * @param xLbPerIn lb on each inch of the member's own length, along x
   * @param yLbPerIn lb on each inch of the member's own length, along y
   */
  record Uniform(
      String member, Axes axes, double fromIn, double toIn, double xLbPerIn, double yLbPerIn)
      implements FrameLoad {
    public Uniform {
      Require.finite("load start on member " + member, fromIn, "in");
      Require.finite("uniform x load on member " + member, xLbPerIn, "lb/in");
      Require.finite("uniform y load on member " + member, yLbPerIn, "lb/in");
      if (!(toIn > fromIn)) {
        throw new IllegalArgumentException(
            "uniform load on member "
                + member
                + " from "
                + fromIn
                + " in to "
                + toIn
                + " in must end beyond its start");
      }
    }

    /** Over the member's whole length. */
    public static Uniform whole(String member, Axes axes, double xLbPerIn, double yLbPerIn) {
      return new Uniform(member, axes, 0, Double.POSITIVE_INFINITY, xLbPerIn, yLbPerIn);
    }
  }

  /**
   * A load at one place of a member.
   *
   * @param member name of the member
   * @param axes whose directions x and y are
   * @param atIn place, inches from the member's start
   * @param xLb force along x, lb
   * @param yLb force along y, lb
   */
  record Point(String member, Axes axes, double atIn, double xLb, double yLb) implements FrameLoad {
    public Point {
      Require.finite("load position on member " + member, atIn, "in");
      Require.finite("x force on member " + member, xLb, "lb");
      Require.finite("y force on member " + member, yLb, "lb");
    }
  }
}
