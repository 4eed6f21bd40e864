package org.scantling.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Finds the file that {@code base:} names, from the site file's folder on or from the root. Where
 * the files are a stranger's it may not leave a folder.
 */
final class BaseFinder {
  private static final String HOME = "~";

  private final SourceText site;
  private final Optional<Path> root;
  private final Problems problems;

  /**
   * @param site the site file
   * @param root the folder that the base may not leave, if there is one
   * @param problems where refusals go
   */
  BaseFinder(SourceText site, Optional<Path> root, Problems problems) {
    this.site = site;
    this.root = root.map(folder -> folder.toAbsolutePath().normalize());
    this.problems = problems;
  }

  /** A base file as found, and the name by which problems call it. */
  record Found(Path file, String name) {}

  /**
   * @param field the key, with its place where it holds a list
   * @param written the path as the site file has it
   */
  Optional<Found> find(String field, String written, Origin origin) {
    if (written.startsWith(HOME) || written.contains("\\")) {
      return refused(
          field, origin, written, ProblemPhrases.say("accepted.base-path", "home", HOME), "");
    }
    try {
      Path file = site.folder().toAbsolutePath().resolve(written).normalize();
      return root.map(file::startsWith).orElse(true)
          ? existing(field, file, written, origin)
          : refused(field, origin, found("found.base-outside", written), inside(), "");
    } catch (InvalidPathException unusable) {
      return refused(field, origin, written, ProblemPhrases.say("accepted.system-path"), "");
    }
  }

  private Optional<Found> existing(String field, Path file, String written, Origin origin) {
    if (!Files.isRegularFile(file)) {
      String found = Files.exists(file) ? "found.base-folder" : "found.base-nowhere";
      return refused(
          field,
          origin,
          found(found, written),
          ProblemPhrases.say("accepted.base"),
          Neighbours.advice(file, written));
    }
    if (!insideRoot(file)) {
      return refused(field, origin, found("found.base-link", written), inside(), "");
    }
    String name = shownName(written);
    if (site.name().equals(name)) {
      return refused(
          field,
          origin,
          found("found.base-itself", written),
          ProblemPhrases.say("accepted.base-other"),
          "");
    }
    return Optional.of(new Found(file, name));
  }

  private Optional<Found> refused(
      String field, Origin origin, String found, String accepted, String advice) {
    problems.add(
        origin.problem(field, ProblemPhrases.shortened(found), accepted).withAdvice(advice));
    return Optional.empty();
  }

  private static String found(String saying, String written) {
    return ProblemPhrases.say(saying, "found", written);
  }

  private static String inside() {
    return ProblemPhrases.say("accepted.base-inside");
  }

  private String shownName(String written) {
    Path name = Path.of(site.name()).resolveSibling(written).normalize();
    return name.toString().replace('\\', '/');
  }

  /** A file whose real place cannot be told is taken to be outside. */
  private boolean insideRoot(Path file) {
    if (root.isEmpty()) {
      return true;
    }
    try {
      return file.toRealPath().startsWith(root.get().toRealPath());
    } catch (IOException gone) {
      return false;
    }
  }
}
