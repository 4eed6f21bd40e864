package org.scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** A site file and its base that come with the program, as files for whoever reads files. */
final class ShippedFiles {
  private static final String RESOURCES = "/org/scantling/";
  private static final List<String> FILES = List.of("site.yaml", "base.yaml");

  private ShippedFiles() {}

  /**
   * What somebody makes of the site file of a folder of resources, with its base beside it.
   *
   * @param resources name of the folder
   * @param reader told the site file, which is gone afterwards
   */
  static <T> T read(String resources, Function<Path, T> reader) {
    try {
      Path folder = Files.createTempDirectory("scantling");
      try {
        for (String file : FILES) {
          copy(RESOURCES + resources + "/" + file, folder.resolve(file));
        }
        return reader.apply(folder.resolve(FILES.get(0)));
      } finally {
        for (String file : FILES) {
          Files.deleteIfExists(folder.resolve(file));
        }
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(String resource, Path to) throws IOException {
    try (InputStream in = ShippedFiles.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is not on the class path");
      }
      Files.copy(in, to);
    }
  }
}
