package org.scantling.print;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.reasons.Proposal;
import tools.jackson.databind.node.ObjectNode;

/**
 * One column of a comparison.
 *
 * @param file the site file
 * @param settings what was set otherwise than the file has it
 * @param figures where prices were given
 */
public record ComparedSite(
    String file, List<String> settings, Proposal proposal, Optional<Figures> figures) {
  public ComparedSite {
    settings = List.copyOf(settings);
  }

  /**
   * What it comes to in money and time.
   *
   * @param cost the total
   * @param leftOut how many things have no price
   * @param hours of work
   * @param json adds the same for programs
   */
  public record Figures(String cost, String leftOut, String hours, Consumer<ObjectNode> json) {}
}
