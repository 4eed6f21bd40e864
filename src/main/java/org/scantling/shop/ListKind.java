package org.scantling.shop;

/** The lists by name. */
public enum ListKind {
  CUT_LIST("cut-list", "Cut list"),
  BUYING("buying", "Buying list"),
  SET_OUT("set-out", "Set-out"),
  ORDER("order", "Order of work"),
  CLIMBERS("climbers", "Climbers");

  private final String word;
  private final String heading;

  ListKind(String word, String heading) {
    this.word = word;
    this.heading = heading;
  }

  /** The name that is typed and that files have. */
  public String word() {
    return word;
  }

  String heading() {
    return heading;
  }
}
