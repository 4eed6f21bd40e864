package org.scantling.intake;

import java.util.Locale;
import java.util.Optional;
import org.scantling.quantity.QuantityKind;

/** How the single value of a field is written. */
enum EntryKind {
  TEXT,
  PATHS,
  WORD,
  LENGTH(QuantityKind.LENGTH),
  LOAD(QuantityKind.LOAD),
  WIND_SPEED(QuantityKind.WIND_SPEED),
  PERCENT(QuantityKind.PERCENT),
  DEGREE_DAYS(QuantityKind.DEGREE_DAYS),
  TEMPERATURE(QuantityKind.TEMPERATURE),
  COUNT,
  BAYS,
  YEAR,
  DATE,
  ZONE,
  PLACE,
  PLACE_ON_HILL,
  CROSS_FALL;

  private final Optional<QuantityKind> quantity;

  EntryKind() {
    this.quantity = Optional.empty();
  }

  EntryKind(QuantityKind quantity) {
    this.quantity = Optional.of(quantity);
  }

  /** What is accepted, as it follows "must be". */
  String accepted() {
    return quantity
        .map(QuantityKind::accepted)
        .orElseGet(
            () ->
                ProblemPhrases.say(
                    "accepted." + name().toLowerCase(Locale.ROOT).replace('_', '-')));
  }

  Optional<QuantityKind> quantity() {
    return quantity;
  }

  boolean isNumber() {
    return quantity.isPresent()
        || this == COUNT
        || this == BAYS
        || this == YEAR
        || this == ZONE
        || this == PLACE_ON_HILL
        || this == CROSS_FALL;
  }
}
