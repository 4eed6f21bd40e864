package org.scantling.tables;

import java.util.Optional;

/** Finds the row that answers for a place or a side in the wind. */
final class SiteLookup {
  private SiteLookup() {}

  static Optional<FreezingIndexRow> freezingIndex(
      Table<FreezingIndexRow> rows, String state, String county) {
    Optional<FreezingIndexRow> best = Optional.empty();
    for (FreezingIndexRow row : rows.rows()) {
      if (!row.state().equals(state)) {
        continue;
      }
      if (row.counties().contains(county)) {
        if (row.bound().equals("local")) {
          return Optional.of(row);
        }
        best = Optional.of(row);
      } else if (best.isEmpty() && row.restOfState()) {
        best = Optional.of(row);
      }
    }
    return best;
  }

  static WindRow windLattice(Table<WindRow> rows, double solidRatio) {
    double wallFrom = rows.row("wind.lattice.solid-from").amount();
    for (WindRow row : rows.rows()) {
      if (row.id().startsWith("wind.lattice.flat.")
          && solidRatio >= row.fromRatio()
          && (solidRatio < row.toRatio()
              || (solidRatio <= wallFrom && wallFrom <= row.toRatio()))) {
        return row;
      }
    }
    throw new IllegalArgumentException(
        "solid share " + solidRatio + " must be from 0 to " + wallFrom + "; above it is a wall");
  }

  static WindRow windWall(Table<WindRow> rows, double lengthRatio) {
    if (!(lengthRatio > 0)) {
      throw new IllegalArgumentException(
          "length over height " + lengthRatio + " must be above zero");
    }
    Optional<WindRow> best = Optional.empty();
    for (WindRow row : rows.rows()) {
      if (row.id().startsWith("wind.wall.")
          && (best.isEmpty()
              || (row.fromRatio() <= lengthRatio && row.fromRatio() > best.get().fromRatio()))) {
        best = Optional.of(row);
      }
    }
    return best.orElseThrow();
  }
}
