package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;

/**
 * Moves every number of every table: some case, some site, some page or some list must notice.
 *
 * <p>What notices which number stands in {@code nudged-cells.csv}. {@code -Dnudge=all} looks for it
 * anew and writes it (half an hour), {@code -Dnudge=new} only for numbers that are not there. Else
 * a part of it, other for every {@code -Dnudge.seed}, is held against the program.
 */
@Tag("slow")
class NudgedNumbersTest {
  private static final Path RECORD = Path.of("src/test/resources/rulecases/nudged-cells.csv");
  private static final String HEADING = "table,id,column,part,way,noticed by";
  private static final long SEED = Long.getLong("nudge.seed", 1);
  private static final int MOST_WATCHES = 24;
  private static final int MOST_CELLS = 3;

  private final ChangedTables tables = new ChangedTables();
  private final List<Cell> cells = tables.cells();
  private final List<Unnoticed> excused = read();

  private static List<Unnoticed> read() {
    try {
      return Unnoticed.all();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private boolean excused(Cell cell) {
    return excused.stream().anyMatch(each -> each.about(cell));
  }

  private static List<Witness> record() throws IOException {
    return Files.readAllLines(RECORD).stream().skip(1).map(Witness::read).toList();
  }

  @Test
  void every_number_is_noticed_by_something_or_has_a_reason_why_not() throws IOException {
    Set<Cell> witnessed = record().stream().map(Witness::cell).collect(Collectors.toSet());
    List<Cell> left =
        cells.stream().filter(cell -> !witnessed.contains(cell) && !excused(cell)).toList();

    Set<Cell> unnoticed =
        left.isEmpty()
            ? Set.of()
            : new CellSweep(tables, Watches.all(tables), found -> {}).unnoticed(left);

    assertThat(unnoticed)
        .as("numbers that move nothing: use them, or take them out, or say why in %s", "the list")
        .isEmpty();
  }

  @Test
  void no_reason_is_given_for_a_number_that_is_noticed_or_gone() throws IOException {
    List<Witness> record = record();

    assertThat(excused)
        .allSatisfy(
            each -> {
              assertThat(each.why()).isNotBlank();
              assertThat(cells).anyMatch(each::about);
              assertThat(record).noneMatch(found -> each.about(found.cell()));
            });
    assertThat(record).allMatch(found -> cells.contains(found.cell()));
  }

  @Test
  void what_noticed_a_number_still_does() throws IOException {
    Map<String, Watch> watches = new HashMap<>();
    Watches.all(tables).forEach(each -> watches.put(each.name(), each));
    Set<Cell> lost = new LinkedHashSet<>();
    sample()
        .forEach(
            (name, witnesses) -> {
              for (Witness each : witnesses) {
                Watch watch = watches.get(name);
                boolean holds =
                    watch != null
                        && tables
                            .nudged(each.cell(), each.way())
                            .filter(change -> watch.notices(List.of(change)))
                            .isPresent();
                if (!holds) {
                  lost.add(each.cell());
                }
              }
            });

    assertThat(
            lost.isEmpty()
                ? lost
                : new CellSweep(tables, Watches.all(tables), found -> {}).unnoticed(lost))
        .as("numbers that move nothing any more")
        .isEmpty();
  }

  /** A few of those who notice, each with a few of the numbers that they notice. */
  private Map<String, List<Witness>> sample() throws IOException {
    Random random = new Random(SEED);
    Map<String, List<Witness>> byWatch = new LinkedHashMap<>();
    for (Witness each : record()) {
      byWatch.computeIfAbsent(each.watch(), name -> new ArrayList<>()).add(each);
    }
    List<String> names = new ArrayList<>(byWatch.keySet());
    Collections.shuffle(names, random);
    byWatch.keySet().retainAll(Set.copyOf(names.subList(0, Math.min(MOST_WATCHES, names.size()))));
    byWatch.replaceAll(
        (name, all) -> {
          Collections.shuffle(all, random);
          return all.subList(0, Math.min(MOST_CELLS, all.size()));
        });
    return byWatch;
  }

  @Test
  @EnabledIfSystemProperty(named = "nudge", matches = "all|new")
  void what_notices_each_number_is_written_down() throws IOException {
    Set<String> lines = new TreeSet<>();
    List<Cell> sought = new ArrayList<>(cells);
    if (System.getProperty("nudge").equals("new")) {
      for (Witness each : record()) {
        if (sought.remove(each.cell())) {
          lines.add(each.line());
        }
      }
    }
    String only = System.getProperty("nudge.tables", "");
    sought.removeIf(cell -> !only.isEmpty() && !List.of(only.split(";")).contains(cell.table()));
    Path soFar = Path.of("target/nudged-so-far.csv");
    Files.write(soFar, lines);

    Set<Cell> left = sweep(sought, soFar, lines);

    List<String> all = new ArrayList<>(lines);
    all.add(0, HEADING);
    Files.write(RECORD, all);
    assertThat(left.stream().filter(cell -> !excused(cell))).isEmpty();
  }

  private Set<Cell> sweep(List<Cell> sought, Path soFar, Set<String> lines) throws IOException {
    return new CellSweep(
            tables,
            Watches.all(tables),
            each -> {
              lines.add(each.line());
              try {
                Files.writeString(soFar, each.line() + "\n", StandardOpenOption.APPEND);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            })
        .unnoticed(sought);
  }
}
