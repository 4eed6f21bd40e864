package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;

/** Moves each number of each table: some case, some site or some page must notice. */
@Tag("slow")
class NudgedNumbersTest {
  private final ChangedTables tables = new ChangedTables();

  @Test
  void sweep() throws IOException {
    String only = System.getProperty("nudge", "all");
    List<Cell> cells =
        tables.cells().stream()
            .filter(cell -> only.equals("all") || List.of(only.split(";")).contains(cell.table()))
            .toList();
    Path out = Path.of("target/nudged-" + only.replace(";", "-") + ".csv");
    Files.writeString(out, "");
    List<Watch> watches = Watches.all(tables);
    System.out.println(cells.size() + " cells, " + watches.size() + " watches");
    long start = System.nanoTime();
    Set<Cell> left =
        new CellSweep(
                tables,
                watches,
                witness -> {
                  try {
                    Files.writeString(
                        out,
                        witness.line()
                            + ","
                            + (System.nanoTime() - start) / 1000000
                            + "\n",
                        StandardOpenOption.APPEND);
                  } catch (IOException e) {
                    throw new IllegalStateException(e);
                  }
                })
            .unnoticed(cells);
    Files.writeString(Path.of(out + ".left"), String.join("\n", left.stream().map(Cell::toString).toList()));
    assertThat(left).isEmpty();
  }
}
