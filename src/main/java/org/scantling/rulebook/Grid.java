package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.scantling.sayings.WordFile;

/** The grid of sites over which thumb and calculation are set side by side: rules/grid.csv. */
public final class Grid {
  private Grid() {}

  /**
   * One demand and what it takes.
   *
   * @param path where the site file says it
   * @param values mildest first
   */
  public record Axis(String path, List<String> values) {}

  public static List<Axis> axes() {
    return WordFile.read("grid.csv").stream()
        .map(row -> new Axis(row.cell("path"), row.list("values", ";")))
        .toList();
  }

  /** Every site of the grid, as one value for each axis. */
  public static List<List<String>> sites(List<Axis> axes) {
    List<List<String>> sites = new ArrayList<>(List.of(List.of()));
    for (Axis axis : axes) {
      List<List<String>> longer = new ArrayList<>();
      for (List<String> site : sites) {
        for (String value : axis.values()) {
          List<String> next = new ArrayList<>(site);
          next.add(value);
          longer.add(next);
        }
      }
      sites = longer;
    }
    return sites;
  }
}
