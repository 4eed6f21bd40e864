package org.scantling.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The files that stand where one was named that is not there. */
final class Neighbours {
  private static final int MOST = 1000;

  private Neighbours() {}

  /** Advice such as {@code Maybe base/rose-gate.yaml?}, or empty where no single file is near. */
  static String advice(Path file, String written) {
    List<String> beside = beside(file, written);
    String stem = stem(written);
    List<String> sameStem = beside.stream().filter(each -> stem(each).equals(stem)).toList();
    Optional<String> near =
        sameStem.size() == 1 ? Optional.of(sameStem.get(0)) : NearMiss.nearest(written, beside);
    return near.map(ProblemPhrases::maybe).orElse("");
  }

  private static String stem(String name) {
    return name.replaceFirst("[.](ya?ml|json)$", "");
  }

  /** Written as the named one was. */
  private static List<String> beside(Path file, String written) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      String start = written.substring(0, written.lastIndexOf('/') + 1);
      return files
          .limit(MOST)
          .filter(Files::isRegularFile)
          .map(path -> start + path.getFileName())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }
}
