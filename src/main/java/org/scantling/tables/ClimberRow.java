package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * What a way of climbing wants to hold on to.
 *
 * @param id the way, as the vines table names it
 * @param run upright or level wires, or none
 * @param apartIn greatest distance between wires
 * @param eyesApartIn greatest distance between eyes along a wire
 * @param lowestIn least height of a level wire above the ground
 * @param wire kind and thickness of wire
 * @param eye what it hangs in
 * @param words what to tell whoever plants
 */
public record ClimberRow(
    String id,
    String run,
    double apartIn,
    double eyesApartIn,
    double lowestIn,
    String wire,
    String eye,
    String words,
    Source source,
    String note)
    implements TableRow {

  static ClimberRow read(Row row) {
    String run = row.oneOf("run", "upright", "level", "none");
    boolean wired = !run.equals("none");
    return new ClimberRow(
        row.text("id"),
        run,
        wired ? row.positive("apart_in") : row.notNegative("apart_in"),
        run.equals("level") ? row.positive("eyes_apart_in") : row.notNegative("eyes_apart_in"),
        row.notNegative("lowest_in"),
        row.optional("wire"),
        row.optional("eye"),
        row.text("words"),
        row.source(),
        row.optional("note"));
  }
}
