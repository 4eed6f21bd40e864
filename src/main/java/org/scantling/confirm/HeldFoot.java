package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * How deep a foot must stand against the push that asks for most.
 *
 * @param push the one that does
 * @param needed how deep
 */
public record HeldFoot(FootPush push, NonConstrainedEmbedment needed) implements Calculated {
  /** Nothing where nothing pushes. */
  @Override
  public List<FormulaLine> lines() {
    if (!(needed.depthIn() > 0)) {
      return List.of();
    }
    List<FormulaLine> lines = new ArrayList<>(push.lines());
    needed.lines().forEach(line -> lines.add(push.wind().isPresent() ? line : onPier(line)));
    return lines;
  }

  /** Of a push that frames were solved for, no line above tells. */
  private static FormulaLine onPier(FormulaLine line) {
    return line.id().equals("length-hole")
        ? line.as("length-pier").calling("push", "solved")
        : line;
  }
}
