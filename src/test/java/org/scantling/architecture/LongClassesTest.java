package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No class of the program is longer than 250 lines but those of {@code long-classes.txt}, and each
 * of those is still longer: the list may only shrink.
 */
class LongClassesTest {
  private static final Path SOURCES = Path.of("src/main/java/org/scantling");
  private static final Path LIST = Path.of("src/test/resources/architecture/long-classes.txt");
  private static final int MOST_LINES = 250;

  @Test
  void no_class_is_longer_than_it_may_be_but_those_of_the_list() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> classes = files.filter(each -> each.toString().endsWith(".java")).toList();
      assertThat(classes).hasSizeGreaterThan(900);
      classes.stream()
          .filter(LongClassesTest::isLong)
          .forEach(each -> found.add(SOURCES.relativize(each).toString().replace('\\', '/')));
    }
    assertThat(found).containsExactlyElementsOf(Files.readAllLines(LIST));
  }

  private static boolean isLong(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count() > MOST_LINES;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
