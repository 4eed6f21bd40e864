package org.scantling.shop;

import org.scantling.design.Structure.Member;
import org.scantling.sayings.Sayings;
import org.scantling.tables.TimberUse;

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

  /** What a stick of it is bought for. */
  TimberUse use(boolean inTheGround) {
    return new TimberUse(species, grade, inTheGround);
  }

  /** As a yard says it; groups of several firs keep their hyphens. */
  String words() {
    String said = species.contains("fir") ? species : species.replace('-', ' ');
    return Sayings.of("pieces").say("timber", "species", said, "grade", grade);
  }
}
