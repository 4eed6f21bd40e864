package org.scantling.batch;

/**
 * A line as it stands in a file.
 *
 * @param number counted from 1
 * @param bytes without the end of the line; what fits, where it is too long
 * @param tooLong whether it is longer than a site may be
 */
record RawLine(int number, byte[] bytes, boolean tooLong) {
  boolean isBlank() {
    for (byte each : bytes) {
      if (each > ' ' || each < 0) {
        return false;
      }
    }
    return true;
  }
}
