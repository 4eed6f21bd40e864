package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.sayings.Sayings;

/** What must be known of a joint before anything is cut. */
final class OpenPoints {
  private static final Sayings SAYINGS = Sayings.of("pieces");

  private OpenPoints() {}

  static List<String> of(Built built) {
    List<String> open = new ArrayList<>();
    if (Braces.packingIn(built) > 0) {
      open.add(SAYINGS.say("open.packing"));
    }
    if (new Crossbeams(built).crowded()) {
      open.add(SAYINGS.say("open.crowded"));
    }
    return open;
  }
}
