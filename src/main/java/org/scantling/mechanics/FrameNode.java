package org.scantling.mechanics;

import org.scantling.quantity.Require;

/**
 * A joint or end of a plane frame.
 *
 * @param name how loads, members and messages call it, unique in the frame
 * @param xIn place sideways, in
 * @param yIn place upwards, in
 * @param support how it is held
 */
public record FrameNode(String name, double xIn, double yIn, Support support) {
  public FrameNode {
    Require.finite("x of node " + name, xIn, "in");
    Require.finite("y of node " + name, yIn, "in");
  }

  /** A joint that is not held. */
  public static FrameNode joint(String name, double xIn, double yIn) {
    return new FrameNode(name, xIn, yIn, Support.FREE);
  }
}
