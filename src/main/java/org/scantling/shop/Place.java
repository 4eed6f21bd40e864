package org.scantling.shop;

import org.scantling.design.Point;

/**
 * Where one piece lies: the ends of the line through the middle of its section, shaped and sloping
 * ends taken to their longest.
 *
 * @param first the end that distances are measured from
 * @param last the other
 */
public record Place(Point first, Point last) {
  /** The point that far from the first end. */
  Point at(double fromFirstIn) {
    double share = fromFirstIn / first.toIn(last);
    return new Point(
        first.alongIn() + share * (last.alongIn() - first.alongIn()),
        first.acrossIn() + share * (last.acrossIn() - first.acrossIn()),
        first.upIn() + share * (last.upIn() - first.upIn()));
  }
}
