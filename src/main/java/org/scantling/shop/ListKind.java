package org.scantling.shop;

/** The lists by name. */
public enum ListKind {
  CUT_LIST("cut-list"),
  BUYING("buying"),
  SET_OUT("set-out"),
  ORDER("order"),
  CLIMBERS("climbers"),
  UPKEEP("upkeep");

  private final String word;

  ListKind(String word) {
    this.word = word;
  }

  /** The name that is typed and that files have. */
  public String word() {
    return word;
  }
}
