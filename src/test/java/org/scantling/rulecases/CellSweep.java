package org.scantling.rulecases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;
import org.scantling.tables.ChangedTables.Change;

/**
 * Looks for what notices each cell. Many cells are nudged at once: where nothing comes of it, none
 * of them is noticed there, and where something does, the halves are looked at by themselves.
 */
final class CellSweep {
  private final ChangedTables tables;
  private final List<Watch> watches;
  private final Consumer<Witness> told;

  /**
   * @param told each witness as it is found
   */
  CellSweep(ChangedTables tables, List<Watch> watches, Consumer<Witness> told) {
    this.tables = tables;
    this.watches = watches;
    this.told = told;
  }

  /** The cells that nothing notices, nudged whichever way. */
  Set<Cell> unnoticed(Collection<Cell> cells) {
    Set<Cell> left = new LinkedHashSet<>(cells);
    for (int way = ChangedTables.nudges() - 1; way >= 0; way--) {
      for (Watch watch : watches) {
        List<Change> changes = new ArrayList<>();
        for (Cell cell : left) {
          Optional<Change> nudged =
              watch.mayNotice(cell) ? tables.nudged(cell, way) : Optional.empty();
          nudged.ifPresent(changes::add);
        }
        if (watch instanceof Watch.Cases) {
          for (Change change : changes) {
            if (watch.notices(List.of(change))) {
              found(change, way, watch, left);
            }
          }
        } else {
          search(watch, changes, way, left);
        }
      }
    }
    return left;
  }

  private void search(Watch watch, List<Change> changes, int way, Set<Cell> left) {
    if (changes.isEmpty() || !watch.notices(changes)) {
      return;
    }
    if (changes.size() == 1) {
      found(changes.get(0), way, watch, left);
      return;
    }
    int half = changes.size() / 2;
    search(watch, changes.subList(0, half), way, left);
    search(watch, changes.subList(half, changes.size()), way, left);
  }

  private void found(Change change, int way, Watch watch, Set<Cell> left) {
    left.remove(change.cell());
    told.accept(new Witness(change.cell(), way, watch.name()));
  }
}
