package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.TopLine;

/** What a proposal leaves open that must be settled before anything is cut. */
final class OpenPoints {
  private OpenPoints() {}

  static List<String> of(Built built) {
    List<String> open = new ArrayList<>();
    TopLine top = built.top();
    if (top.stepped()) {
      stepped(built, top, open);
    }
    if (built.has("brace")) {
      braced(built, top, open);
    }
    return open;
  }

  private static void stepped(Built built, TopLine top, List<String> open) {
    double fallIn = Math.abs(top.groundIn(0) - top.groundIn(1));
    if (!built.paired()) {
      open.add(
          "At every step the lower header meets the side of its post. The proposal does not size"
              + " what holds it there: have a hanger chosen for the load before cutting.");
    } else if (fallIn < built.geometry().headers().depthIn()) {
      open.add(
          "At every step the boards of two bays cross the same post and the fall is less than their"
              + " depth, so they cannot both be bolted to its sides as drawn. Settle this joint"
              + " before cutting.");
    } else {
      open.add(
          "At every step the boards of two bays are bolted to the same post, one pair below the"
              + " other. The proposal checks one crossing only: have the lower one looked at.");
    }
  }

  private static void braced(Built built, TopLine top, List<String> open) {
    if (Braces.packingIn(built) > 0) {
      open.add(
          "The braces along the walk lap the header and stand off the posts: pack them out. The bolts"
              + " were checked across that gap, the packing counted as holding nothing.");
    }
    if (top.posts() > 2) {
      open.add(
          "At the middle posts two braces along the walk meet on opposite sides and share one bolt"
              + " line. The bolts were checked one brace at a time: set the two braces at different"
              + " heights, or have the joint looked at.");
    }
    if (top.follows()) {
      open.add(
          "On falling ground mark the ends of the braces in place: the corners are not square.");
    }
  }
}
