package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * A nail, screw, bolt or lag screw.
 *
 * @param type nail, screw, bolt or lag
 * @param name as asked for in the shop
 * @param diameterIn shank diameter
 * @param lengthIn whole length
 * @param rootDiameterIn diameter at the root of the thread, the shank where there is none
 * @param bendingYieldPsi Fyb
 */
public record FastenerRow(
    String id,
    String type,
    String name,
    double diameterIn,
    double lengthIn,
    double rootDiameterIn,
    double bendingYieldPsi,
    Source source,
    String note)
    implements TableRow {

  static FastenerRow read(Row row) {
    return new FastenerRow(
        row.text("id"),
        row.oneOf("type", "nail", "screw", "bolt", "lag"),
        row.text("name"),
        row.positive("diameter_in"),
        row.positive("length_in"),
        row.positive("root_diameter_in"),
        row.positive("bending_yield_psi"),
        row.source(),
        row.optional("note"));
  }
}
