package org.scantling.verification;

import java.util.Optional;

/**
 * What became of a row when it was computed. It can be had only by computing the row, so the report
 * cannot list one that nothing ran.
 */
final class Outcome {
  private final PackRow row;
  private final double ours;
  private final Throwable fault;

  private Outcome(PackRow row, double ours, Throwable fault) {
    this.row = row;
    this.ours = ours;
    this.fault = fault;
  }

  /** Computes the row; a kernel that refuses or a mode that differs is a fault of the row. */
  static Outcome of(PackRow row, Quantities quantities) {
    try {
      return new Outcome(row, quantities.compute(row), null);
    } catch (RuntimeException | AssertionError fault) {
      return new Outcome(row, Double.NaN, fault);
    }
  }

  PackRow row() {
    return row;
  }

  /** What the program says; not a number where it says nothing. */
  double ours() {
    return ours;
  }

  Optional<Throwable> fault() {
    return Optional.ofNullable(fault);
  }

  boolean met() {
    return fault == null && row.metBy(ours);
  }

  double differenceRatio() {
    return fault == null ? row.differenceRatio(ours) : Double.POSITIVE_INFINITY;
  }
}
