package org.scantling.shop;

import org.scantling.design.Structure.Member;

/**
 * Of what timber a piece is.
 *
 * @param species species group of the design values
 * @param grade visual grade
 */
public record PieceTimber(String species, String grade) {
  static PieceTimber of(Member member) {
    return new PieceTimber(member.species(), member.grade());
  }

  /** As a yard says it; groups of several firs keep their hyphens. */
  String words() {
    String said = species.contains("fir") ? species : species.replace('-', ' ');
    return said + " " + grade;
  }
}
