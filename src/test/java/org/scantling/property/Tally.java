package org.scantling.property;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What the random sites came to, counted and left in a file under target. */
final class Tally {
  private final Map<String, Integer> counts = new TreeMap<>();

  void add(String what) {
    counts.merge(what, 1, Integer::sum);
  }

  void most(String what, int count) {
    counts.merge(what, count, Math::max);
  }

  int of(String what) {
    return counts.getOrDefault(what, 0);
  }

  int startingWith(String what) {
    return counts.entrySet().stream()
        .filter(each -> each.getKey().startsWith(what))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  void keep(String file) {
    StringBuilder text = new StringBuilder();
    counts.forEach((what, count) -> text.append(count).append('\t').append(what).append('\n'));
    try {
      Path folder = Files.createDirectories(Path.of("target", "random-sites"));
      Files.writeString(folder.resolve(file), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
