package org.scantling.intake;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads what {@code base:} of a site file names: one base design, or several, each once. */
final class NamedBases {
  private static final String FIELD = "base";

  private final BaseFinder finder;
  private final Problems problems;

  NamedBases(BaseFinder finder, Problems problems) {
    this.finder = finder;
    this.problems = problems;
  }

  /**
   * A base as read.
   *
   * @param written its path, as the site file has it
   */
  record Read(String written, DesignIntake intake) {}

  /** One path, at the place where it stands. */
  private record Named(String field, String path, Origin origin) {}

  /**
   * Every base that can be read; what is wrong with the others, and with what they hold, is told.
   *
   * @param file the site file as it is written
   * @param said what was read of it
   * @param reader of a base file that was found
   */
  List<Read> read(
      Node.Group file, Readings said, Function<BaseFinder.Found, Optional<DesignIntake>> reader) {
    List<Read> all = new ArrayList<>();
    Set<Path> before = new HashSet<>();
    for (Named named : named(file, said)) {
      finder
          .find(named.field(), named.path(), named.origin())
          .filter(found -> once(found, named, before))
          .flatMap(reader)
          .ifPresent(intake -> all.add(new Read(named.path(), intake)));
    }
    return all;
  }

  private static List<Named> named(Node.Group file, Readings said) {
    List<Named> all = new ArrayList<>();
    if (said.maybeWord(FIELD).isPresent()) {
      all.add(new Named(FIELD, said.word(FIELD), file.originOf(FIELD)));
    }
    for (int place = 0; place < said.size(FIELD); place++) {
      String field = FIELD + "[" + place + "]";
      Origin origin =
          file.at(FIELD) instanceof Node.Items each
              ? each.items().get(place).origin()
              : file.originOf(FIELD);
      said.maybeWord(field).ifPresent(path -> all.add(new Named(field, path, origin)));
    }
    return all;
  }

  private boolean once(BaseFinder.Found found, Named named, Set<Path> before) {
    if (before.add(real(found.file()))) {
      return true;
    }
    problems.add(
        named
            .origin()
            .problem(
                named.field(),
                ProblemPhrases.shortened(
                    ProblemPhrases.say("found.base-twice", "found", named.path())),
                ProblemPhrases.say("accepted.base-once")));
    return false;
  }

  /** Two ways to the same file name one base. */
  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException gone) {
      return file;
    }
  }
}
