package org.scantling.intake;

/** Which table owns the words of a field. */
enum TableWords {
  NONE("word"),
  SPECIES("species"),
  GRADES("grade"),
  SOILS("soil"),
  VINES("vine"),
  USERS("user"),
  SIZES("size");

  private final String noun;

  TableWords(String noun) {
    this.noun = noun;
  }

  String noun() {
    return noun;
  }
}
