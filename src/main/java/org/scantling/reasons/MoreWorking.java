package org.scantling.reasons;

import java.util.List;

/**
 * What of the calculation only the engineer's sheet shows. Its lists are kept as they are given,
 * since each may be worked out only when it is read.
 *
 * @param diagrams shear and moment of crossbeam and header
 * @param tried next smaller sizes that a check stopped
 */
public record MoreWorking(List<BeamDiagram> diagrams, List<TriedSize> tried) {
  /** Of what is not worked out. */
  public static MoreWorking none() {
    return new MoreWorking(List.of(), List.of());
  }
}
