package org.scantling.quantity;

import java.util.List;

/**
 * A result of a kernel that can tell how it was worked.
 *
 * <p>What is told is what was worked: each line is made of the numbers that the result carries, and
 * nothing in it is worked again. Lines are made when they are asked for, so a result that nobody
 * asks about costs nothing more.
 */
public interface Calculated {
  /** Every line of the calculation, in the order it was worked. */
  List<FormulaLine> lines();
}
