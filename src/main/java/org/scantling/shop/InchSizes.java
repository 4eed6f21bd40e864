package org.scantling.shop;

import org.scantling.quantity.InchText;
import org.scantling.quantity.Length;
import org.scantling.quantity.RatingText;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FastenerRow;

/**
 * Fasteners are of inch sizes and keep their names; where the yard thinks in millimetres, what they
 * measure stands beside.
 */
final class InchSizes {
  private static final Sayings SAYINGS = Sayings.of("pieces");

  private final boolean metric;

  InchSizes(Built built) {
    this.metric = built.tape() == Tape.MILLIMETRES;
  }

  String told(double inches) {
    return beside(Length.inches(inches));
  }

  /** A bolt by its thickness: its length goes by what it passes through. */
  String bolt(double diameterIn) {
    return SAYINGS.say("bolt", "size", told(diameterIn));
  }

  /** A fastener by its name, with its thickness and length. */
  String told(FastenerRow row) {
    String size =
        InchText.millimetres(row.diameterIn()) + " x " + InchText.millimetres(row.lengthIn());
    return metric ? row.name() + " (" + size + " mm)" : row.name();
  }

  /**
   * A text of a table, with millimetres after each of its inch sizes and its ratings in
   * kilonewtons.
   */
  String beside(String text) {
    return metric
        ? rated(
            InchText.replaced(text, size -> size.written() + " (" + size.millimetres() + " mm)"))
        : text;
  }

  /** What a maker rates, in pounds, or in kilonewtons where the yard thinks in millimetres. */
  String rated(String text) {
    return metric ? RatingText.metric(text) : text;
  }
}
