package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * A square notch at a beam's end.
 *
 * @param depthIn how deep it is cut, 0 or more
 * @param reachIn e, how far it goes past the inner edge of the support, 0 or more; counts only for
 *     a notch on the compression face
 */
public record EndNotch(double depthIn, double reachIn) {
  public EndNotch {
    Require.zeroOrMore("notch depth", depthIn, "in");
    Require.zeroOrMore("reach of the notch", reachIn, "in");
  }
}
