package org.scantling.intake;

import org.scantling.design.Locality;
import org.scantling.tables.Shown;

/** Reads where on earth a site lies. */
final class WrittenPlace {
  private WrittenPlace() {}

  static void read(Node.Scalar value, String path, Problems problems, Readings readings) {
    boolean plain = value.text().codePoints().noneMatch(Shown::drives);
    if (plain && Locality.of(value.text()).isPresent()) {
      readings.putWord(path, value.text().strip());
    } else {
      problems.add(value.origin().problem(path, value.words(), EntryKind.PLACE.accepted()));
    }
  }
}
