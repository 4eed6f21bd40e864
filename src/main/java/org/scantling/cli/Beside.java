package org.scantling.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folders that stand beside a folder while it is written: the new one, named by the run that
 * fills it, and for a moment the old one, named by the folder.
 */
final class Beside {
  private static final String NEW = ".scantling-new-";
  private static final String OLD = ".scantling-old-";
  private static final Pattern OF_A_RUN = Pattern.compile("\\.scantling-new-(\\d{1,9})-.*");

  private final Path whole;
  private final Path parent;
  private final Path old;

  /**
   * @param parent the folder that the folder stands in, and these beside it
   * @param name of the folder
   */
  Beside(Path parent, String name) {
    this.parent = parent;
    this.whole = parent.resolve(name);
    this.old = parent.resolve(OLD + name);
  }

  /** The folder itself. */
  Path whole() {
    return whole;
  }

  Path fresh() throws IOException {
    return Files.createTempDirectory(parent, NEW + ProcessHandle.current().pid() + "-");
  }

  /** Puts right what a run that was broken off has left. */
  void finishEarlier() throws IOException {
    if (Files.isDirectory(old)) {
      if (Files.exists(whole, LinkOption.NOFOLLOW_LINKS)) {
        bringOver();
      } else {
        Files.move(old, whole, StandardCopyOption.ATOMIC_MOVE);
      }
    }
    for (Path each : list(parent)) {
      if (isLeft(each)) {
        remove(each);
      }
    }
  }

  /** A new folder whose run is gone. */
  private static boolean isLeft(Path each) {
    String name = each.getFileName().toString();
    Matcher run = OF_A_RUN.matcher(name);
    return name.startsWith(NEW)
        && !(run.matches()
            && ProcessHandle.of(Long.parseLong(run.group(1)))
                .filter(ProcessHandle::isAlive)
                .isPresent());
  }

  /** The new folder takes the place of the old one, then what is not ours goes over into it. */
  void switchTo(Path fresh) throws IOException {
    Files.move(whole, old, StandardCopyOption.ATOMIC_MOVE);
    try {
      Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException cannot) {
      Files.move(old, whole, StandardCopyOption.ATOMIC_MOVE);
      throw cannot;
    }
    bringOver();
  }

  private void bringOver() throws IOException {
    bringOver(OutManifest.read(old), "");
    remove(old);
  }

  /**
   * What is not ours, at its place.
   *
   * @param within folder below the old one with a stroke after it, or nothing
   */
  private void bringOver(OutManifest before, String within) throws IOException {
    for (Path each : list(old.resolve(within))) {
      String name = within + each.getFileName();
      boolean ours =
          name.equals(OutManifest.NAME) || name.startsWith(NEW) || before.holds(old, name);
      Path there = whole.resolve(name);
      if (folder(each) && folder(there)) {
        bringOver(before, name + "/");
      } else if (!ours && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
        Files.move(each, there, StandardCopyOption.ATOMIC_MOVE);
      } else if (!ours) {
        throw new IOException(CommandWords.say("out.left", "folder", old.toString()));
      }
    }
  }

  private static boolean folder(Path path) {
    return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  static void remove(Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
