package org.scantling.confirm;

import org.scantling.concurrent.Lazy;
import org.scantling.quantity.Check;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.AxialStress;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BendingWithTension;
import org.scantling.timber.BentAxis;
import org.scantling.timber.BucklingLength;
import org.scantling.timber.Column;
import org.scantling.timber.CombinedStress;
import org.scantling.timber.Rectangle;

/**
 * One ply of a member that is pressed or pulled and bent at once. One is asked for hundreds of
 * cases of a combination, so what does not change with the forces is worked once.
 */
final class BracedMember {
  private final Rectangle section;
  private final BucklingLength length;
  private final double straightnessFactor;
  private final AdjustedValues values;
  private final Lazy<BeamStability> stability;

  /**
   * @param section of the ply, its depth in the plane of the frame
   * @param length effective length between its supports, the same both ways
   * @param straightnessFactor c of a sawn column
   * @param values adjusted for the combination
   */
  BracedMember(
      Rectangle section, BucklingLength length, double straightnessFactor, AdjustedValues values) {
    this.section = section;
    this.length = length;
    this.straightnessFactor = straightnessFactor;
    this.values = values;
    this.stability =
        new Lazy<>(
            () ->
                BeamStability.of(
                    section,
                    BeamLoading.OTHER.effective(length.lengthIn(), section.depthIn()),
                    values));
  }

  /** Of a length that is taken as it is. */
  BracedMember(
      Rectangle section, double lengthIn, double straightnessFactor, AdjustedValues values) {
    this(section, new BucklingLength(1, lengthIn), straightnessFactor, values);
  }

  Rectangle section() {
    return section;
  }

  AdjustedValues values() {
    return values;
  }

  /** The same member where only that section of it is left. */
  BracedMember left(Rectangle net) {
    return new BracedMember(net, length, straightnessFactor, values);
  }

  /**
   * Forces on the ply.
   *
   * @param axialLb along it, tension positive
   * @param momentInLb bending in the plane of the frame
   * @param crossMomentInLb bending square to it
   * @param offsetIn how far the pressing force misses the centre, in the plane of the frame
   */
  record Forces(double axialLb, double momentInLb, double crossMomentInLb, double offsetIn) {}

  Column column(double pressedLb) {
    return Column.of(pressedLb, section, new Column.Bracing(length, straightnessFactor), values);
  }

  BeamStability stability() {
    return stability.get();
  }

  Bending bending(double momentInLb) {
    return Bending.of(momentInLb, section, values, stability());
  }

  /** Pressure or pull together with bending. */
  Check combined(Forces forces) {
    return forces.axialLb() > 0 ? pulled(forces) : pressed(forces);
  }

  private Check pressed(Forces forces) {
    Bending flatwise = Bending.of(forces.crossMomentInLb(), section.turned(), values.bending());
    return CombinedStress.of(
            column(-forces.axialLb()),
            new BentAxis(bending(forces.momentInLb()), section.depthIn(), forces.offsetIn()),
            new BentAxis(flatwise, section.breadthIn(), 0),
            stability())
        .check();
  }

  private Check pulled(Forces forces) {
    AxialStress pull = AxialStress.of(forces.axialLb(), section.areaIn2(), values.tension());
    double bothInLb = Math.abs(forces.momentInLb()) + Math.abs(forces.crossMomentInLb());
    return BendingWithTension.of(pull, bending(bothInLb)).check();
  }
}
