package org.scantling.cli;

import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.scantling.quantity.QuantityKind;
import org.scantling.spans.Assumptions;
import org.scantling.tables.Tables;
import picocli.CommandLine.Option;

/** What presses on the members of a span table, and how far they may bend. */
final class SpanLoadOptions {
  @Option(names = "--dead", defaultValue = "10 psf", paramLabel = "LOAD")
  private String dead;

  @Option(names = "--live", defaultValue = "20 psf", paramLabel = "LOAD")
  private String live;

  @Option(names = "--duration", paramLabel = "FACTOR")
  private @Nullable String duration;

  @Option(names = "--own-weight", paramLabel = "included|added")
  private @Nullable String ownWeight;

  @Option(names = "--person", paramLabel = "FORCE")
  private @Nullable String person;

  @Option(names = "--deflection-live", paramLabel = "DIVISOR|none")
  private @Nullable String liveDivisor;

  @Option(names = "--deflection-total", paramLabel = "DIVISOR|none")
  private @Nullable String totalDivisor;

  @Option(names = "--creep", paramLabel = "FACTOR")
  private @Nullable String creep;

  /**
   * @param open true for beams of an open top, as the engine checks them: somebody climbs on it,
   *     and the dead load is what lies on the timber
   */
  Assumptions.Loads loads(OptionReader reader, Tables tables, boolean open) {
    Assumptions.Loads loads =
        new Assumptions.Loads(
            reader.amount("--dead", QuantityKind.LOAD, dead),
            reader.amount("--live", QuantityKind.LOAD, live),
            duration == null
                ? tables.factors().loadDuration("roof-live").amount()
                : factor(reader, tables, duration),
            person(reader, tables, open),
            ownWeightAdded(reader, open));
    if (!(loads.deadPsf() + loads.livePsf() + loads.personLb() > 0)) {
      reader.misplaced("--dead, --live", CommandWords.say("spans.no-load"));
    }
    return loads;
  }

  private double person(OptionReader reader, Tables tables, boolean open) {
    if (person != null) {
      return reader.amount("--person", QuantityKind.FORCE, person);
    }
    return open ? tables.live("live.person").amount() : 0;
  }

  private boolean ownWeightAdded(OptionReader reader, boolean open) {
    return ownWeight == null
        ? open
        : reader.word("--own-weight", ownWeight, Set.of("included", "added")).equals("added");
  }

  /** From permanent to impact; nothing lasts longer or shorter. */
  private static double factor(OptionReader reader, Tables tables, String duration) {
    double least = tables.factors().loadDuration("dead").amount();
    double most = tables.factors().loadDuration("impact").amount();
    double factor = reader.bare("--duration", duration, 0);
    if (factor < least || factor > most) {
      reader.complain(
          "--duration",
          duration,
          CommandWords.say(
              "accepted.between", "least", String.valueOf(least), "most", String.valueOf(most)));
      return most;
    }
    return factor;
  }

  Assumptions.Sag sag(OptionReader reader, Tables tables, boolean wet) {
    return new Assumptions.Sag(
        divisor(reader, tables, "--deflection-live", liveDivisor, "deflection.live-share"),
        divisor(reader, tables, "--deflection-total", totalDivisor, "deflection.total-share"),
        creep == null
            ? tables.factor(wet ? "creep.wet" : "creep.seasoned").amount()
            : reader.bare("--creep", creep, 1));
  }

  private static OptionalDouble divisor(
      OptionReader reader, Tables tables, String option, @Nullable String text, String row) {
    // The rows are shares with six digits; a divisor is a whole number.
    return text == null
        ? OptionalDouble.of(Math.rint(1 / tables.thumb(row).amount()))
        : reader.divisor(option, text);
  }
}
