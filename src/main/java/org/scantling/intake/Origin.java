package org.scantling.intake;

import java.util.OptionalInt;
import org.scantling.tables.EdgeRow;

/** Where a value was written: a line of a file, or a {@code --set} option without a line. */
record Origin(String file, OptionalInt line) {
  static Origin line(String file, int line) {
    return new Origin(file, OptionalInt.of(line));
  }

  static Origin whole(String file) {
    return new Origin(file, OptionalInt.empty());
  }

  /** Another line of the same file. */
  Origin at(int other) {
    return line(file, other);
  }

  Outside outside(String field, String found, EdgeRow edge) {
    return new Outside(file, line, field, found, edge.because(), edge.whose());
  }

  Problem problem(String field, String found, String accepted) {
    return new Problem(file, line, field, found, accepted, "", false);
  }

  /**
   * A problem with something that is not there.
   *
   * @param what it is, as it is called to people
   */
  Problem lacking(String field, String what, String accepted) {
    return new Problem(
        file, line, field, ProblemPhrases.say("found.missing", "what", what), accepted, "", true);
  }
}
