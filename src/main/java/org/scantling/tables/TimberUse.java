package org.scantling.tables;

import org.scantling.tables.Yard.Made;

/**
 * What a stick is bought for: a yard may ask another price for the same size where it is treated
 * for the ground, or is of another species or grade.
 *
 * @param species species group of the design values
 * @param grade visual grade
 * @param inTheGround true of posts that stand in soil
 */
public record TimberUse(String species, String grade, boolean inTheGround) {
  private static final String LASTING = "lasting.";

  /** True for a species whose heartwood lasts untreated. */
  public boolean lasts(Tables tables) {
    return tables.defaults().find(LASTING + species).isPresent();
  }

  /**
   * What it must be treated for: the use category where it stands, or for a species that lasts
   * untreated what is taken of it.
   */
  public String treatment(Tables tables) {
    String where = inTheGround ? "treatment.in-ground" : "treatment.above-ground";
    return tables
        .defaults()
        .find(LASTING + species)
        .orElseGet(() -> tables.defaults().row(where))
        .word();
  }

  /** True where timber that a yard says is made so can be used: what it does not say is free. */
  boolean served(Made made, Tables tables) {
    return made.treatment().map(treatment(tables)::equals).orElse(true)
        && made.species().map(species::equals).orElse(true)
        && made.grade().map(grade::equals).orElse(true);
  }
}
