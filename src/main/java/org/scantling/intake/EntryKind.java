package org.scantling.intake;

import java.util.Optional;
import org.scantling.quantity.QuantityKind;

/** How the single value of a field is written. */
enum EntryKind {
  TEXT("text"),
  WORD("a word"),
  LENGTH(QuantityKind.LENGTH),
  LOAD(QuantityKind.LOAD),
  WIND_SPEED(QuantityKind.WIND_SPEED),
  PERCENT(QuantityKind.PERCENT),
  DEGREE_DAYS(QuantityKind.DEGREE_DAYS),
  TEMPERATURE(QuantityKind.TEMPERATURE),
  COUNT("a whole number without quotes or unit, such as 7"),
  YEAR("a year without quotes, such as 2011"),
  DATE("a year, a month or a day, such as 2012, 2012-10 or 2012-10-29"),
  ZONE("a plant hardiness zone, such as 5 or 6b"),
  PLACE_ON_HILL("crest, or a distance from it, such as 120 ft");

  private final String accepted;
  private final Optional<QuantityKind> quantity;

  EntryKind(String accepted) {
    this.accepted = accepted;
    this.quantity = Optional.empty();
  }

  EntryKind(QuantityKind quantity) {
    this.accepted = quantity.accepted();
    this.quantity = Optional.of(quantity);
  }

  /** What is accepted, as it follows "must be". */
  String accepted() {
    return accepted;
  }

  Optional<QuantityKind> quantity() {
    return quantity;
  }

  boolean isNumber() {
    return quantity.isPresent()
        || this == COUNT
        || this == YEAR
        || this == ZONE
        || this == PLACE_ON_HILL;
  }
}
