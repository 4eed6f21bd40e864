package org.scantling.shop;

/** How ends are told. */
final class EndWords {
  private final Said said;

  EndWords(Said said) {
    this.said = said;
  }

  String both(Shape shape) {
    String first = of(shape.first());
    String last = of(shape.last());
    if (first.equals(last)) {
      return first;
    }
    return shape.ends().first() + " " + first + "; " + shape.ends().last() + " " + last;
  }

  String of(EndCut end) {
    if (end instanceof EndCut.Sloping sloping) {
      return said.degrees(sloping.offSquareDegrees())
          + " off square, longer by "
          + said.length(sloping.setBackIn())
          + " on "
          + sloping.longEdge();
    }
    return end instanceof EndCut.Shaped ? "shaped by the template" : "square";
  }
}
