package org.scantling.print;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * A kernel with numbers to work on.
 *
 * @param prefix how the rows of its lines begin
 * @param line the line that is looked at
 * @param work from the numbers to the result
 * @param used what of the result is used, in the unit of the line
 * @param row under which row a line is told
 * @param given the numbers
 */
record Kernel(
    String name,
    String prefix,
    String line,
    Function<double[], Calculated> work,
    ToDoubleFunction<Calculated> used,
    UnaryOperator<FormulaLine> row,
    double[] given) {

  @SuppressWarnings("unchecked")
  static <R extends Calculated> Kernel of(
      String name,
      String id,
      Function<double[], R> work,
      ToDoubleFunction<R> used,
      double... given) {
    int cut = id.lastIndexOf('.') + 1;
    return new Kernel(
        name,
        id.substring(0, cut),
        id.substring(cut),
        work::apply,
        result -> used.applyAsDouble((R) result),
        UnaryOperator.identity(),
        given);
  }

  /** The same with its lines told under other rows. */
  Kernel as(UnaryOperator<FormulaLine> other) {
    return new Kernel(name, prefix, line, work, used, other, given);
  }

  Calculated result() {
    return work.apply(given);
  }

  double usedNumber() {
    return used.applyAsDouble(result());
  }

  FormulaLine told() {
    return result().lines().stream()
        .filter(each -> each.id().equals(line))
        .reduce((first, last) -> last)
        .orElseThrow();
  }

  List<FormulaLine> lines() {
    return result().lines();
  }

  /** The same kernel with one of its numbers a little greater. */
  Kernel nudged(int which) {
    double[] other = given.clone();
    other[which] = other[which] == 0 ? 0.01 : other[which] * 1.01;
    String nudged = name + ", number " + which + " of " + Arrays.toString(given) + " nudged";
    return new Kernel(nudged, prefix, line, work, used, row, other);
  }

  List<Kernel> eachNudged() {
    return IntStream.range(0, given.length).mapToObj(this::nudged).toList();
  }

  @Override
  public String toString() {
    return name;
  }
}
