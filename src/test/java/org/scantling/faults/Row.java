package org.scantling.faults;

/** One more line at the end of a table. */
record Row(String file, String line) implements Edit {
  @Override
  public String on(String text) {
    return text + line + "\n";
  }
}
