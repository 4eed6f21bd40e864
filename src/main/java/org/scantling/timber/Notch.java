package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * A notch in a bending member.
 *
 * @param place where along the member
 * @param onTensionEdge true where the load stretches that edge
 * @param depthIn how deep, above 0
 * @param lengthIn how long, along the grain, above 0
 */
public record Notch(NotchPlace place, boolean onTensionEdge, double depthIn, double lengthIn) {
  public Notch {
    Require.positive("notch depth", depthIn, "in");
    Require.positive("notch length", lengthIn, "in");
  }
}
