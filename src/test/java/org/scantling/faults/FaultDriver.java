package org.scantling.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Runs trials one after the other and shrinks those that fail. */
final class FaultDriver {
  private final Path folder;
  private final List<String> failures = new ArrayList<>();
  private final Map<String, Integer> statuses = new TreeMap<>();

  FaultDriver(Path folder) {
    this.folder = folder;
  }

  /**
   * @param from the first seed
   * @param count of trials
   * @return what failed, each with its smallest files
   */
  List<String> run(Trials.Kind kind, long from, int count) {
    for (long seed = from; seed < from + count; seed++) {
      Trial trial = Trials.of(kind, seed);
      Optional<String> wrong = trial.wrong(folder);
      if (wrong.isPresent()) {
        Trial small = shrunk(trial);
        String said = small.wrong(folder).orElse("no more");
        failures.add(kind + " " + wrong.get() + "\nshrunk: " + said + "\n" + small.told());
        statuses.merge(said.replaceAll("[0-9.]+", "#"), 1, Integer::sum);
      }
    }
    return failures;
  }

  Map<String, Integer> kinds() {
    return statuses;
  }

  /** With as few of its changes as still fail, and by the plainest command that does. */
  private Trial shrunk(Trial trial) {
    Trial smallest = trial;
    boolean smaller = true;
    while (smaller) {
      smaller = false;
      for (int i = 0; i < smallest.edits().size() && !smaller; i++) {
        Trial fewer = smallest.without(i);
        if (fewer.wrong(folder).isPresent()) {
          smallest = fewer;
          smaller = true;
        }
      }
    }
    return smallest;
  }

  /** {@code KIND FROM COUNT SECONDS}: a run of any length, told as it goes. */
  public static void main(String[] args) throws IOException {
    Trials.Kind kind = Trials.Kind.valueOf(args[0].toUpperCase(Locale.ROOT));
    FaultDriver driver = new FaultDriver(Files.createTempDirectory("trials"));
    long seed = Long.parseLong(args[1]);
    long last = seed + Long.parseLong(args[2]);
    long end = System.nanoTime() + Long.parseLong(args[3]) * 1_000_000_000;
    int told = 0;
    while (seed < last && System.nanoTime() < end) {
      int batch = (int) Math.min(50, last - seed);
      List<String> failures = driver.run(kind, seed, batch);
      seed += batch;
      for (; told < failures.size(); told++) {
        System.out.println("=====\n" + failures.get(told));
      }
    }
    System.out.println("up to seed " + seed + ": " + driver.kinds());
  }
}
