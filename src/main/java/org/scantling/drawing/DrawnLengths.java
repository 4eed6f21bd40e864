package org.scantling.drawing;

import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;

/** Lengths as a drawing has them: trade fractions, or millimetres without their unit. */
record DrawnLengths(UnitSystem units) {

  boolean metric() {
    return units == UnitSystem.METRIC;
  }

  /** In a dimension. */
  String figure(double inches) {
    if (inches == 0) {
      return "0";
    }
    return metric() ? Length.millimetres(inches).replace(" mm", "") : Length.feetAndInches(inches);
  }

  /** In a sentence. */
  String said(double inches) {
    return metric() ? Length.millimetres(inches) : Length.feetAndInches(inches);
  }

  Drawn.Figure of(String of, double inches) {
    return new Drawn.Figure(figure(inches), of, inches);
  }
}
