package org.scantling.reasons;

import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * A structural check that was worked.
 *
 * @param id such as crossbeam.bending
 * @param role the member or footing it is about
 * @param combination the load combination that was worst
 * @param loadDurationFactor its C_D, or 1 where duration plays no part
 * @param check demand against capacity
 * @param unit unit of both
 * @param source standard and section
 */
public record Checked(
    String id,
    String role,
    String combination,
    double loadDurationFactor,
    Check check,
    Unit unit,
    Source source) {

  public Measure demand() {
    return new Measure(check.demand(), unit);
  }

  public Measure capacity() {
    return new Measure(check.capacity(), unit);
  }
}
