package org.scantling.tables;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Source;

/**
 * A small change that is worked out beside every proposal, and told where it gains enough.
 *
 * @param demand what is asked otherwise
 * @param value the word that is tried; nothing for a number, which is tried smaller
 * @param most how many steps less at most, where it is a number
 * @param overStated true where it is tried though the site file states it
 * @param gains what must come of it
 * @param from the hole depth in inches or the number of posts from which on it is tried; 0 for
 *     sizes, which must have grown
 * @param gain by how much less of that must come of it; 0 for sizes
 * @param pick which one is told where several gain enough
 * @param timberMoreRatio by what share the timber may grow
 * @param deeperIn by how much deeper the holes may become
 * @param statement what is tried, in trade words
 */
public record NearMissRow(
    String id,
    Demand demand,
    Optional<String> value,
    OptionalInt most,
    boolean overStated,
    Gain gains,
    double from,
    double gain,
    Pick pick,
    double timberMoreRatio,
    double deeperIn,
    String statement,
    Source source,
    String note)
    implements TableRow {
  /** What is gained. */
  public enum Gain {
    /** Posts, headers or crossbeams of a smaller timber. */
    SIZE,
    /** Holes that are less deep. */
    DEPTH,
    /** Fewer posts. */
    POSTS
  }

  /** Which of several is told. */
  public enum Pick {
    /** The one that asks for the least. */
    NEAREST,
    /** The one that gains most. */
    MOST
  }

  /** What a client or a builder chooses in steps; nobody chooses the frost. */
  private static final Set<Demand> NUMBERS =
      Set.of(Demand.HEADROOM, Demand.CLEAR_WIDTH, Demand.WALK_LENGTH, Demand.BAYS);

  private static final Map<Demand, List<String>> WORDS =
      Map.of(
          Demand.FOOTING,
          List.of(WayOfBuilding.CONCRETE, WayOfBuilding.BRACKET, WayOfBuilding.MOMENT_BASE),
          Demand.HEADER,
          List.of(WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED));

  static NearMissRow read(Row row) {
    String path =
        row.oneOf(
            "demand",
            Stream.concat(NUMBERS.stream(), WORDS.keySet().stream())
                .map(Demand::path)
                .sorted()
                .toArray(String[]::new));
    Demand demand = Demand.of(path);
    boolean number = NUMBERS.contains(demand);
    Gain gains = Gain.valueOf(word(row, "gains", Gain.values()));
    boolean counted = gains != Gain.SIZE;
    return new NearMissRow(
        row.text("id"),
        demand,
        number ? Optional.empty() : Optional.of(value(row, demand)),
        number ? OptionalInt.of((int) row.positive("most")) : OptionalInt.empty(),
        row.yes("over_stated"),
        gains,
        counted ? row.positive("from") : 0,
        counted ? row.positive("gain") : 0,
        Pick.valueOf(word(row, "pick", Pick.values())),
        row.share("timber_more"),
        row.notNegative("deeper_in"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }

  private static String word(Row row, String column, Enum<?>... words) {
    return row.oneOf(
            column,
            Stream.of(words)
                .map(each -> each.name().toLowerCase(Locale.ROOT))
                .toArray(String[]::new))
        .toUpperCase(Locale.ROOT);
  }

  private static String value(Row row, Demand demand) {
    return row.oneOf("value", WORDS.getOrDefault(demand, List.of()).toArray(String[]::new));
  }
}
