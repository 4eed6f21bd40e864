package org.scantling.shop;

import org.scantling.sayings.Sayings;

/** How ends are told. */
final class EndWords {
  private static final Sayings SAYINGS = Sayings.of("cut-list");

  private final Said said;

  EndWords(Said said) {
    this.said = said;
  }

  String both(Shape shape) {
    String first = of(shape.first());
    String last = of(shape.last());
    return first.equals(last)
        ? first
        : SAYINGS.say(
            "ends.differ",
            "first",
            shape.ends().first(),
            "first-cut",
            first,
            "last",
            shape.ends().last(),
            "last-cut",
            last);
  }

  String of(EndCut end) {
    if (end instanceof EndCut.Sloping sloping) {
      return SAYINGS.say(
          "ends.sloping",
          "degrees",
          said.degrees(sloping.offSquareDegrees()),
          "length",
          said.length(sloping.setBackIn()),
          "edge",
          sloping.longEdge());
    }
    return SAYINGS.say(end instanceof EndCut.Shaped ? "ends.shaped" : "ends.square");
  }
}
