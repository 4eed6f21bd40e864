package org.scantling.tables;

import java.util.Locale;

/** What a check keeps from happening, which decides how its limit is told. */
public enum CheckNature {
  /** Something breaks, gives way or comes loose. */
  STRENGTH,
  /** Something sags or sways so that one sees or feels it. */
  STIFFNESS,
  /** A proportion or a distance that a standard prescribes; nothing is worked out from loads. */
  PRESCRIBED;

  /** The word of the table. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static CheckNature read(Row row) {
    return valueOf(
        row.oneOf("nature", "strength", "stiffness", "prescribed").toUpperCase(Locale.ROOT));
  }
}
