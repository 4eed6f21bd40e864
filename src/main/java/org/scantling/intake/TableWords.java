package org.scantling.intake;

/** Which table owns the words of a field. */
enum TableWords {
  NONE,
  SPECIES,
  GRADES,
  SOILS,
  VINES,
  USERS,
  SIZES
}
