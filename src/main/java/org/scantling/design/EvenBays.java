package org.scantling.design;

/**
 * Bays of one length.
 *
 * @param count 1 or more
 * @param longestIn of each
 */
record EvenBays(int count, double longestIn) implements Bays {
  @Override
  public double shortestIn() {
    return longestIn;
  }

  @Override
  public double lengthIn(int bay) {
    return longestIn;
  }

  @Override
  public double alongIn(int post) {
    return post * longestIn;
  }

  @Override
  public int spacesIn(int bay, int inLongest) {
    return inLongest;
  }

  @Override
  public int spaces(int inLongest) {
    return count * inLongest;
  }

  @Override
  public boolean even() {
    return true;
  }

  @Override
  public boolean mirrored() {
    return true;
  }

  @Override
  public double tributaryIn() {
    return count > 1 ? longestIn : longestIn / 2;
  }
}
