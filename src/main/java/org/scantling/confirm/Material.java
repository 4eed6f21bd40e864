package org.scantling.confirm;

import org.scantling.loads.MemberWeight;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.DesignValues;
import org.scantling.timber.Rectangle;

/**
 * One stock size in one species and grade, as it stands outdoors.
 *
 * @param section dressed size of one ply, upright
 * @param plies boards side by side
 * @param reference tabulated design values
 * @param adjustments every factor but load duration
 * @param unitWeightPcf weight when wet
 */
public record Material(
    Rectangle section,
    int plies,
    DesignValues reference,
    Adjustments adjustments,
    double unitWeightPcf) {

  /** Design values for a load of that duration. */
  public AdjustedValues lasting(double loadDurationFactor) {
    return AdjustedValues.of(reference, adjustments.lasting(loadDurationFactor));
  }

  /** All plies as one section. */
  public Rectangle whole() {
    return new Rectangle(plies * section.breadthIn(), section.depthIn());
  }

  /** One board of the pair. */
  public Material onePly() {
    return new Material(section, 1, reference, adjustments, unitWeightPcf);
  }

  /** That many of them side by side. */
  public Material plies(int count) {
    return new Material(section, count, reference, adjustments, unitWeightPcf);
  }

  /** All plies as the one timber that a bolt through them all finds. */
  Material asOne() {
    return new Material(whole(), 1, reference, adjustments, unitWeightPcf);
  }

  /** The same timber without weight, where the stated dead load holds its own weight already. */
  public Material weightless() {
    return new Material(section, plies, reference, adjustments, 0);
  }

  /** Weight of all plies. */
  public double weightLbPerIn() {
    return unitWeightPcf > 0 ? weight().weightLbPerIn() : 0;
  }

  /** The same with how it was worked, of timber that is not weightless. */
  public MemberWeight weight() {
    Rectangle whole = whole();
    return MemberWeight.of(whole.breadthIn(), whole.depthIn(), unitWeightPcf);
  }
}
