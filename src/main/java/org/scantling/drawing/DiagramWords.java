package org.scantling.drawing;

import java.util.function.Function;
import org.scantling.quantity.Measure;

/**
 * How the amounts of a diagram are told.
 *
 * @param role the member
 * @param check what is worked hardest
 * @param amounts how an amount is said
 */
public record DiagramWords(String role, String check, Function<Measure, String> amounts) {
  String said(Measure measure) {
    return amounts.apply(measure);
  }
}
