package org.scantling.shop;

import java.util.List;

/**
 * Sticks cut alike.
 *
 * @param lengthIn as bought
 * @param times how many sticks
 * @param marks what each is cut into, in order
 * @param whole true where one piece takes all of it and leaves nothing to square the ends with
 */
public record StickCut(double lengthIn, int times, List<String> marks, boolean whole) {
  public StickCut {
    marks = List.copyOf(marks);
  }
}
