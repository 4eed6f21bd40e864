package org.scantling.depths;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Reasoned;

/**
 * Hole depths with what they rest on.
 *
 * @param rows in the order of the request; none where a single hole was asked for and is told
 * @param here the one hole that was asked for, or that of the site
 * @param answer the structure that was looked at first: what was decided of it and of its place
 */
public record DepthTable(
    DepthRequest request, List<DepthRow> rows, Optional<Here> here, Reasoned answer) {
  public DepthTable {
    rows = List.copyOf(rows);
  }

  /**
   * The answer to "how deep here".
   *
   * @param cautions what a person must be told, gravest first
   */
  public record Here(DepthRow row, List<Reason> cautions) {
    public Here {
      cautions = List.copyOf(cautions);
    }
  }

  /** The cell of a case. */
  public DepthRow row(DepthCase at) {
    return rows.stream().filter(each -> each.at().equals(at)).findFirst().orElseThrow();
  }
}
