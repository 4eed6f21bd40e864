package org.scantling.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A file of rules as it was written, with the cases beside it.
 *
 * @param place folder and name without ending, such as crossbeams/size
 * @param cases what stands in the file of cases, if there is one
 */
public record RuleFile(String place, String text, Optional<String> cases) {
  private static final String FOLDER = "/org/scantling/written-rules";
  private static final String RULES = ".drl";
  private static final String CASES = ".cases.json";

  /** Every file of rules that the program was built from, sorted. */
  static List<RuleFile> all() {
    URL folder = RuleFile.class.getResource(FOLDER);
    if (folder == null) {
      throw new IllegalStateException("the rules as they were written are not on the class path");
    }
    try {
      return inside(folder.toURI());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<RuleFile> inside(URI folder) throws IOException {
    if (!folder.getScheme().equals("jar")) {
      return under(Path.of(folder));
    }
    try (FileSystem jar = FileSystems.newFileSystem(folder, Map.of())) {
      return under(jar.getPath(FOLDER));
    }
  }

  private static List<RuleFile> under(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(file -> file.toString().endsWith(RULES))
          .map(file -> read(root, file))
          .sorted((one, other) -> one.place().compareTo(other.place()))
          .toList();
    }
  }

  private static RuleFile read(Path root, Path file) {
    try {
      String place = root.relativize(file).toString().replace('\\', '/').replace(RULES, "");
      Path cases = file.resolveSibling(file.getFileName().toString().replace(RULES, CASES));
      Optional<String> written =
          Files.exists(cases) ? Optional.of(Files.readString(cases)) : Optional.empty();
      return new RuleFile(place, Files.readString(file), written);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
