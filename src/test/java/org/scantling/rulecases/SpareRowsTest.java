package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.scantling.tables.Tables;

/** Keeps the list of rules of thumb that nothing reads yet, so that it is seen and shrinks. */
class SpareRowsTest {
  private static final Path LIST = Path.of("src/test/resources/rulecases/spare-rows.txt");
  private static final Pattern WORD = Pattern.compile("\"([^\"\\s]+)\"");

  @Test
  void the_rows_that_nothing_reads_are_those_of_the_list() throws IOException {
    Set<String> words = words();

    assertThat(
            Tables.load().thumbs().rows().stream()
                .map(row -> row.id())
                .filter(id -> words.stream().noneMatch(word -> names(word, id))))
        .as("rows of thumb.csv that no rule and no class reads; the list is %s", LIST)
        .containsExactlyInAnyOrderElementsOf(listed());
  }

  private static List<String> listed() throws IOException {
    return Files.readAllLines(LIST).stream().filter(line -> !line.startsWith("#")).toList();
  }

  /** A word with a dash or a dot at its end means all rows that go on from there. */
  private static boolean names(String word, String id) {
    return word.equals(id) || (word.matches(".+\\..*[-.]") && id.startsWith(word));
  }

  private static Set<String> words() throws IOException {
    Set<String> words = new HashSet<>();
    for (Path folder : List.of(Path.of("rules"), Path.of("src/main/java"))) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(SpareRowsTest::isCode).toList()) {
          WORD.matcher(Files.readString(file)).results().forEach(each -> words.add(each.group(1)));
        }
      }
    }
    return words;
  }

  private static boolean isCode(Path file) {
    return file.toString().endsWith(".drl") || file.toString().endsWith(".java");
  }
}
