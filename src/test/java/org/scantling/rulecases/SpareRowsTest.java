package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Tables;

/** Keeps the list of rules of thumb that nothing reads yet, so that it is seen and shrinks. */
class SpareRowsTest {
  private static final Path LIST = Path.of("src/test/resources/rulecases/spare-rows.txt");
  private static final Pattern WORD = Pattern.compile("\"([^\"\\s]+)\"");

  @Test
  void the_rows_that_nothing_reads_are_those_of_the_list() {
    Set<String> spare = spare(Tables.load());

    assertThat(listed().stream().filter(id -> !spare.contains(id)))
        .as("read by now, or gone: take them off %s", LIST)
        .isEmpty();
    assertThat(spare.stream().filter(id -> !listed().contains(id)))
        .as("rows that nothing reads: use them, or put them on %s", LIST)
        .isEmpty();
  }

  /** The rows of thumb.csv whose id no rule and no class names. */
  static Set<String> spare(Tables tables) {
    Set<String> words = words();
    return tables.thumbs().rows().stream()
        .map(NumberRow::id)
        .filter(id -> words.stream().noneMatch(word -> names(word, id)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> listed() {
    return lines(LIST).stream().filter(line -> !line.startsWith("#")).toList();
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A word with a dash or a dot at its end means all rows that go on from there. */
  private static boolean names(String word, String id) {
    return word.equals(id) || (word.matches(".+\\..*[-.]") && id.startsWith(word));
  }

  private static Set<String> words() {
    Set<String> words = new HashSet<>();
    for (Path folder : List.of(Path.of("rules"), Path.of("src/main/java"))) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(SpareRowsTest::isCode).toList()) {
          WORD.matcher(Files.readString(file)).results().forEach(each -> words.add(each.group(1)));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return words;
  }

  private static boolean isCode(Path file) {
    return file.toString().endsWith(".drl") || file.toString().endsWith(".java");
  }
}
