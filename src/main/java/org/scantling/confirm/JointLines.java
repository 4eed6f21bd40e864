package org.scantling.confirm;

import java.util.List;
import java.util.Map;
import org.scantling.quantity.FormulaLine;
import org.scantling.timber.AxialStiffness;
import org.scantling.timber.DowelMember;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Placement;

/**
 * Lines of a kernel that works a joint, with the words that say of what they are.
 *
 * @param words by the blank that they fill: a mode as it is written, a piece or a place by its name
 */
public record JointLines(List<FormulaLine> lines, Map<String, String> words) {
  public JointLines {
    lines = List.copyOf(lines);
    words = Map.copyOf(words);
  }

  static JointLines of(List<FormulaLine> lines) {
    return new JointLines(lines, Map.of());
  }

  static JointLines of(FormulaLine line) {
    return of(List.of(line));
  }

  /** How hard a piece presses back on the fastener. */
  static JointLines of(String piece, DowelMember member) {
    return new JointLines(member.lines(), Map.of("piece", piece));
  }

  static JointLines of(String piece, AxialStiffness stretch) {
    return new JointLines(stretch.lines(), Map.of("piece", piece));
  }

  /** What a distance leaves of a fastener's value. */
  static JointLines of(Placement place) {
    return new JointLines(place.lines(), Map.of("place", place.rule().what()));
  }

  static JointLines of(GeometryFactor geometry) {
    return of(geometry.governing());
  }

  /** What a fastener holds, by the mode in which it gives way first. */
  static JointLines of(LateralValue value, List<FormulaLine> holds) {
    return new JointLines(holds, Map.of("mode", value.governing().numeral()));
  }
}
