package org.scantling.intake;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the file in which somebody keeps what they would otherwise give as options every time: as
 * strictly as the other files, and with the same kind of messages.
 */
public final class DefaultsReader {
  private static final List<String> PATHS = List.of("yard", "prices", "house-rules");
  private static final String HOME = "~/";

  private final Vocabulary vocabulary;
  private final Path home;

  /**
   * @param home what a path that starts with {@code ~/} starts from
   */
  public DefaultsReader(Vocabulary vocabulary, Path home) {
    this.vocabulary = vocabulary;
    this.home = home;
  }

  /**
   * What the file says, by key; paths are those from the file's folder on.
   *
   * @throws IntakeException with all problems of the file
   */
  public Map<String, String> read(Path file) {
    Problems problems = new Problems();
    SourceText source = SourceFile.read(file, file.toString(), problems);
    ShapeReader shapes = new ShapeReader(vocabulary, problems);
    Node.Group group = shapes.repaired(DefaultsFile.class, TreeReader.readGroup(source, problems));
    Readings said = shapes.read(DefaultsFile.class, group);
    problems.throwIfAny();
    Map<String, String> defaults = new LinkedHashMap<>();
    for (ShapeKeys.Key key : ShapeKeys.keys(DefaultsFile.class)) {
      said.maybeWord(key.key())
          .ifPresent(
              word ->
                  defaults.put(
                      key.key(),
                      PATHS.contains(key.key()) ? resolved(source.folder(), word) : word));
    }
    return defaults;
  }

  private String resolved(Path folder, String written) {
    Path path =
        written.startsWith(HOME)
            ? home.resolve(written.substring(HOME.length()))
            : folder.resolve(written);
    return path.normalize().toString();
  }
}
