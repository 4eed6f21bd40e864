package org.scantling.shop;

import java.util.List;

/**
 * Sticks cut alike.
 *
 * @param lengthIn as bought
 * @param times how many sticks
 * @param marks what each is cut into, in order
 */
public record StickCut(double lengthIn, int times, List<String> marks) {
  public StickCut {
    marks = List.copyOf(marks);
  }
}
