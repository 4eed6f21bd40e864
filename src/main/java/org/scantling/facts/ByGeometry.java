package org.scantling.facts;

import org.scantling.reasons.Evidence;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;

/** Quantities that follow from where the parts lie, and from nothing else. */
final class ByGeometry {
  private static final Source GEOMETRY = new Source(SourceKind.CALCULATION, "geometry", false);

  private ByGeometry() {}

  static Worked worked(String id, Question question, double number, Evidence evidence) {
    return new Worked(id, question, number, evidence, GEOMETRY);
  }
}
