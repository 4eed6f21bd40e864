package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import org.scantling.design.Bays;
import org.scantling.quantity.QuantityKind;

/** Bays as a file says them: how many, or where they are not alike the length of each. */
final class WrittenBays {
  private final Object written;

  private WrittenBays(Object written) {
    this.written = written;
  }

  static WrittenBays of(Bays bays) {
    if (bays.even()) {
      return new WrittenBays(bays.count());
    }
    List<String> each =
        bays.lengthsIn().stream().map(in -> WrittenAmount.of(in, QuantityKind.LENGTH)).toList();
    return new WrittenBays(each);
  }

  @JsonValue
  Object written() {
    return written;
  }
}
