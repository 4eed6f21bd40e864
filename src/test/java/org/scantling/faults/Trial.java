package org.scantling.faults;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.cli.Run;

/**
 * One run of the program over files that were changed.
 *
 * @param seed which draws the same trial again
 * @param files by name, before any change; a name that ends in {@code .paths} is written as YAML
 * @param edits the changes, in this order
 * @param args the command line; a word that starts with {@code @} is a file of the trial
 */
record Trial(long seed, Map<String, String> files, List<Edit> edits, List<String> args) {
  private static final long MOST_MILLIS = 3_000;
  private static final int LONGEST_MESSAGE = 20_000;

  Trial without(int place) {
    List<Edit> fewer = new ArrayList<>(edits);
    fewer.remove(place);
    return new Trial(seed, files, fewer, args);
  }

  Trial saying(List<String> other) {
    return new Trial(seed, files, edits, other);
  }

  /** What was wrong with how the program ended; empty where it ended as it should. */
  Optional<String> wrong(Path folder) {
    Optional<String> first = once(folder);
    // A slow run may be the machine's fault; a slow program is slow again.
    return first.filter(each -> each.startsWith("took")).isPresent() ? once(folder) : first;
  }

  private Optional<String> once(Path folder) {
    write(folder);
    long start = System.nanoTime();
    long worked = worked();
    try {
      Run run = Run.of(args.stream().map(word -> placed(word, folder)).toArray(String[]::new));
      // Where others work on the machine, the time on the clock is theirs too.
      long millis = Math.min(System.nanoTime() - start, worked() - worked) / 1_000_000;
      return millis > MOST_MILLIS
          ? Optional.of("took " + millis + " ms")
          : wrong(run).map(each -> each + " | " + run.err().lines().limit(3).toList());
    } catch (Throwable broken) { // nothing may come through, of whatever kind
      return Optional.of(
          broken + " at " + List.of(broken.getStackTrace()).stream().limit(4).toList());
    }
  }

  /** What all threads of this program have worked so far, in nanoseconds. */
  private static long worked() {
    OperatingSystemMXBean system = ManagementFactory.getOperatingSystemMXBean();
    return ((com.sun.management.OperatingSystemMXBean) system).getProcessCpuTime();
  }

  private static Optional<String> wrong(Run run) {
    if (run.status() != 0 && run.status() != 2 && run.status() != 3) {
      return Optional.of("ended with " + run.status());
    }
    if (run.status() == 2 && (run.err().isBlank() || !run.out().isEmpty())) {
      return Optional.of("was refused without a word, or with half an answer");
    }
    if (run.err().length() > LONGEST_MESSAGE) {
      return Optional.of("said too much: " + run.err().length() + " letters");
    }
    return (run.out() + run.err()).codePoints().anyMatch(Trial::drives)
        ? Optional.of("sent signs to the terminal that drive it")
        : Optional.empty();
  }

  private static boolean drives(int sign) {
    return sign != '\n'
        && (Character.isISOControl(sign) || Character.getType(sign) == Character.FORMAT);
  }

  private static String placed(String word, Path folder) {
    return word.startsWith("@") ? folder.resolve(word.substring(1)).toString() : word;
  }

  Map<String, String> written() {
    Map<String, String> texts = new LinkedHashMap<>(files);
    edits.forEach(edit -> texts.computeIfPresent(edit.file(), (name, text) -> edit.on(text)));
    Map<String, String> named = new LinkedHashMap<>();
    texts.forEach(
        (name, text) ->
            named.put(
                name.replace(".paths", ".yaml"),
                name.endsWith(".paths") ? Paths.yaml(text) : text));
    return named;
  }

  private void write(Path folder) {
    try {
      clear(folder);
      for (Map.Entry<String, String> file : written().entrySet()) {
        Path place = folder.resolve(file.getKey());
        Files.createDirectories(place.getParent());
        // What no UTF-8 says is written as it would be in Latin-1: such files exist.
        boolean latin = file.getValue().contains("½");
        Files.write(
            place,
            file.getValue().getBytes(latin ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void clear(Path folder) throws IOException {
    try (Stream<Path> old = Files.walk(folder)) {
      for (Path each : old.sorted(Comparator.reverseOrder()).toList()) {
        if (!each.equals(folder)) {
          Files.delete(each);
        }
      }
    }
  }

  /** What a person needs to see it again. */
  String told() {
    StringBuilder told =
        new StringBuilder("seed " + seed + ": scantling " + String.join(" ", args));
    told.append('\n').append(edits);
    written().forEach((name, text) -> told.append("\n--- ").append(name).append('\n').append(text));
    return told.toString();
  }
}
