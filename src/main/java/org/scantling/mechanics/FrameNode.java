package org.scantling.mechanics;

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
    Numbers.finite("x of node " + name, xIn);
    Numbers.finite("y of node " + name, yIn);
  }

  /** A joint that is not held. */
  public static FrameNode joint(String name, double xIn, double yIn) {
    return new FrameNode(name, xIn, yIn, Support.FREE);
  }
}
