package org.scantling.tables;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Source;

/**
 * A demand or a preference of the site that can be tried with other values.
 *
 * @param id its path in the site file
 * @param scale how it is searched where it is a number; a word is tried with every word of its
 *     table
 * @param words its value as part of a sentence, with {value}
 * @param limits true where thresholds are searched along it
 * @param choice true where somebody chooses it, false where the place sets it
 * @param ordered true for words that stand in order, the least demanding first
 * @param easedByLess true where less of it, or a word that stands before, asks less of a structure;
 *     false where either way may
 * @param weightRatio how hard it is to give up all of its range, beside one that counts 1; empty
 *     for what is no change of its own
 */
public record DemandRow(
    String id,
    Optional<Scale> scale,
    String words,
    boolean limits,
    boolean choice,
    boolean ordered,
    boolean easedByLess,
    OptionalDouble weightRatio,
    Source source,
    String note)
    implements TableRow {

  /**
   * All in one unit.
   *
   * @param step how finely a threshold is told, above 0
   * @param least the least value that is tried
   * @param most the greatest value that is tried
   * @param sampleStep how far apart values are tried before the search closes in; a choice that
   *     comes and goes between two of them is not seen
   * @param reach how far from today's value the search goes at most
   */
  public record Scale(
      Measure step, Measure least, Measure most, Measure sampleStep, Optional<Measure> reach) {}

  static DemandRow read(Row row) {
    boolean number = !row.optional("step").isEmpty();
    return new DemandRow(
        row.text("id"),
        number ? Optional.of(scale(row)) : Optional.empty(),
        row.text("words"),
        row.yes("limits"),
        row.yes("choice"),
        number || row.yes("ordered"),
        row.oneOf("eased_by", "less", "either").equals("less"),
        weight(row),
        row.source(),
        row.optional("note"));
  }

  private static OptionalDouble weight(Row row) {
    return row.optional("weight").isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(row.positive("weight"));
  }

  private static Scale scale(Row row) {
    double least = row.notNegative("least");
    double most = row.positive("most");
    if (!(most > least)) {
      throw row.refuse("most", RefusalWords.say("cells.above", "least", row.optional("least")));
    }
    double step = row.positive("step");
    double sampleStep = row.positive("sample_step");
    if (sampleStep < step) {
      throw row.refuse(
          "sample_step", RefusalWords.say("demands.step", "step", row.optional("step")));
    }
    Unit unit = row.unit();
    OptionalDouble reach = row.optionalNumber("reach");
    return new Scale(
        new Measure(step, unit),
        new Measure(least, unit),
        new Measure(most, unit),
        new Measure(sampleStep, unit),
        reach.isPresent() ? Optional.of(new Measure(reach.getAsDouble(), unit)) : Optional.empty());
  }
}
