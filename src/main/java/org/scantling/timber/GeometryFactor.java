package org.scantling.timber;

import java.util.Comparator;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * C_delta: what end distance, edge distance and spacing leave of a fastener's value.
 *
 * <p>The smallest share of the whole group counts for each fastener in it. Only for fasteners of
 * 1/4 in and thicker; thinner ones have no such factor.
 *
 * <p>Source: NDS, 2018, 12.5.1.
 *
 * @param placements every distance that was looked at, one or more
 */
public record GeometryFactor(List<Placement> placements) implements Calculated {
  public GeometryFactor {
    placements = List.copyOf(placements);
    if (placements.isEmpty()) {
      throw new IllegalArgumentException(
          "a geometry factor must look at one distance or more, found none");
    }
  }

  /** The smallest share. Worked: 5D of 7D end distance and 4D of 4D spacing gives 0.714. */
  public double value() {
    return governing().factor();
  }

  /** The share as a factor to lay on Z. */
  public Factor asFactor() {
    return new Factor("C_delta", value());
  }

  /** The distances under their least, none for fasteners that may be set so. */
  public List<Placement> tooClose() {
    return placements.stream().filter(placement -> !placement.check().passes()).toList();
  }

  /** True where no distance is under its least. */
  public boolean allowed() {
    return tooClose().isEmpty();
  }

  /** The distance that leaves the smallest share. */
  public Placement governing() {
    return placements.stream().min(Comparator.comparingDouble(Placement::factor)).orElseThrow();
  }

  /** The smallest share where it is not all. */
  @Override
  public List<FormulaLine> lines() {
    return governing().lines();
  }
}
