package org.scantling.reasons;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * Shear or moment along a beam under the loads that work one of its checks hardest.
 *
 * @param role the member
 * @param check id of the check
 * @param combination the load combination that was worst for it
 * @param lengthIn from tip to tip
 * @param supportsIn places of the supports from the first tip
 * @param cutsIn supports over which pieces meet
 * @param curve from the first tip on, two amounts at a place where it jumps
 * @param extremes the most of each sign, none where it has nothing of that sign
 */
public record BeamDiagram(
    String role,
    String check,
    String combination,
    Kind kind,
    double lengthIn,
    List<Double> supportsIn,
    List<Double> cutsIn,
    List<At> curve,
    List<At> extremes) {

  public BeamDiagram {
    supportsIn = List.copyOf(supportsIn);
    cutsIn = List.copyOf(cutsIn);
    curve = List.copyOf(curve);
    extremes = List.copyOf(extremes);
  }

  /** What is drawn. */
  public enum Kind {
    SHEAR(Unit.POUND),
    /** Positive where it pulls the underside. */
    MOMENT(Unit.INCH_POUND);

    private final Unit unit;

    Kind(Unit unit) {
      this.unit = unit;
    }

    /** In small letters. */
    public String word() {
      return this == SHEAR ? "shear" : "moment";
    }

    public Measure measure(double amount) {
      return new Measure(amount, unit);
    }
  }

  /**
   * An amount at a place.
   *
   * @param atIn from the first tip
   * @param amount in lb or in-lb
   */
  public record At(double atIn, double amount) {}
}
