package org.scantling.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a calculation as the kernel that worked it hands it out, to be gone over by hand.
 *
 * @param id which formula: the tail of a row's id in {@code workings.csv}, such as {@code mean}
 * @param result what it came to
 * @param operands the numbers that went into it, by the names of the row's blanks
 */
public record FormulaLine(String id, Measure result, List<Operand> operands) {
  public FormulaLine {
    operands = List.copyOf(operands);
  }

  /** A number that went into a formula. */
  public record Operand(String name, Measure measure) {}

  /** A line that no number has been put into yet. */
  public static FormulaLine of(String id, Measure result) {
    return new FormulaLine(id, result, List.of());
  }

  /** The same line where it stands under another row. */
  public FormulaLine as(String other) {
    return new FormulaLine(other, result, operands);
  }

  /** The same line where one of its numbers has another name. */
  public FormulaLine calling(String name, String other) {
    return new FormulaLine(
        id,
        result,
        operands.stream()
            .map(each -> each.name().equals(name) ? new Operand(other, each.measure()) : each)
            .toList());
  }

  /** The same line with one more number in it. */
  public FormulaLine with(String name, Measure measure) {
    List<Operand> more = new ArrayList<>(operands);
    more.add(new Operand(name, measure));
    return new FormulaLine(id, result, more);
  }
}
