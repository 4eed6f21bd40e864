package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * An expected output that a person has read; rewritten only when asked to with {@code
 * -Dgolden.mode=write}.
 */
final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/expected");
  private static final boolean WRITE = "write".equals(System.getProperty("golden"));

  private Golden() {}

  static void compare(String name, String found) {
    Path file = FOLDER.resolve(name);
    try {
      if (WRITE) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, found);
      }
      assertThat(found).as(name).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
