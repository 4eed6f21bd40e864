package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;

/** What must be known of a joint before anything is cut. */
final class OpenPoints {
  private OpenPoints() {}

  static List<String> of(Built built) {
    List<String> open = new ArrayList<>();
    if (Braces.packingIn(built) > 0) {
      open.add(
          "The braces along the walk lap the header and stand off the posts: pack them out. The bolts"
              + " were checked across that gap, the packing counted as holding nothing.");
    }
    if (new Crossbeams(built).crowded()) {
      open.add(
          "A brace across the walk runs into the crossbeam next to the one it is bolted to, and there"
              + " is no room to move that crossbeam over. Settle this before the headers are"
              + " notched.");
    }
    return open;
  }
}
