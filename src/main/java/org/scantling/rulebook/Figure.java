package org.scantling.rulebook;

import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Source;

/**
 * A row of a table that a rule reads.
 *
 * @param table its file
 * @param id its id
 * @param measure its number, where it is one
 * @param word its word or the cells that the rule reads, where it is no number
 * @param words what it says
 * @param source what stands behind it
 */
public record Figure(
    String table, String id, Optional<Measure> measure, String word, String words, Source source) {

  /**
   * How the number came to us: seen in print, second-hand, memory, or none where nothing is
   * printed.
   */
  public String status() {
    return switch (source.kind()) {
      case STANDARD, HANDBOOK -> source.sight().key();
      default -> "none";
    };
  }
}
