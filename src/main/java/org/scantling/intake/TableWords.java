package org.scantling.intake;

/** Which table owns the words of a field. */
enum TableWords {
  NONE(""),
  SPECIES("species"),
  GRADES("grade"),
  SOILS("soil"),
  VINES("vine"),
  USERS("user"),
  SIZES("size");

  private final String list;

  TableWords(String list) {
    this.list = list;
  }

  /** What the table of synonyms calls the list. */
  String list() {
    return list;
  }
}
