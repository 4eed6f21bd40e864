package org.scantling.timber;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Require;

/**
 * One of the pieces that a fastener holds together.
 *
 * @param bearingLengthIn length of the fastener in the piece, above 0
 * @param bearingPsi Fe of the piece in the direction of the load, above 0
 * @param angleDegrees between load and grain in the piece, from 0 to 90; 0 for steel
 * @param wood how its wood presses back; none where the strength is stated
 */
public record DowelMember(
    double bearingLengthIn, double bearingPsi, double angleDegrees, Optional<DowelBearing> wood)
    implements Calculated {
  public DowelMember {
    Require.positive("length of the fastener in the piece", bearingLengthIn, "in");
    Require.positive("dowel bearing strength", bearingPsi, "psi");
    Require.within("angle to the grain", angleDegrees, "degrees", 0, 90);
  }

  /** A piece whose strength is stated. */
  public DowelMember(double bearingLengthIn, double bearingPsi, double angleDegrees) {
    this(bearingLengthIn, bearingPsi, angleDegrees, Optional.empty());
  }

  /** A wooden piece, with its dowel bearing strength at the load's angle to the grain. */
  public static DowelMember ofWood(
      double bearingLengthIn, DowelBearing bearing, double angleDegrees) {
    return new DowelMember(
        bearingLengthIn, bearing.atPsi(angleDegrees), angleDegrees, Optional.of(bearing));
  }

  /** Fe in the direction of the load. */
  @Override
  public List<FormulaLine> lines() {
    return wood.map(each -> each.lines(angleDegrees)).orElse(List.of());
  }
}
