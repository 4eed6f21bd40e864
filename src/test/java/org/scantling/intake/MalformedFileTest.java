package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file under {@code intake/malformed} is wrong in its own way; beside it stands what the user
 * is told. Rewritten only with {@code -Dgolden.mode=write}, then read line by line as a builder
 * would.
 */
class MalformedFileTest {
  private static final Path FOLDER = Example.folder("malformed");
  private static final Path SOURCES = Path.of("src/test/resources/intake/malformed");
  private static final boolean WRITE = "write".equals(System.getProperty("golden"));

  @ParameterizedTest
  @MethodSource("files")
  void a_malformed_file_is_refused_with_place_field_found_and_accepted(String name)
      throws IOException {
    Path file = FOLDER.resolve(name);
    IntakeException refused = catchThrowableOfType(IntakeException.class, () -> read(file));
    assertThat(refused).as("%s must be refused", name).isNotNull();
    String told = told(refused);
    String expectedName = name + ".expected";
    if (WRITE) {
      Files.writeString(SOURCES.resolve(expectedName), told);
    } else {
      assertThat(told).isEqualTo(Files.readString(FOLDER.resolve(expectedName)));
    }
    assertThat(refused.problems()).allSatisfy(MalformedFileTest::is_complete);
  }

  @Test
  void no_expected_text_has_lost_its_file() throws IOException {
    try (Stream<Path> sources = Files.list(SOURCES)) {
      assertThat(sources.map(Path::toString).filter(name -> name.endsWith(".expected")))
          .hasSameSizeAs(files())
          .allSatisfy(name -> assertThat(Path.of(name.replace(".expected", ""))).exists());
    }
  }

  @Test
  void there_are_many_malformed_files() throws IOException {
    assertThat(files()).hasSizeGreaterThan(60);
    assertThat(files().stream().filter(name -> name.endsWith(".json"))).hasSizeGreaterThan(5);
  }

  private static void is_complete(Problem problem) {
    assertThat(problem.file()).isNotBlank();
    assertThat(problem.field()).isNotBlank();
    assertThat(problem.found()).isNotBlank();
    assertThat(problem.accepted()).isNotBlank();
    assertThat(problem.text())
        .contains(problem.file(), problem.field(), problem.found(), problem.accepted())
        .doesNotContain("java", "Exception", "jackson", "null")
        .hasSizeLessThan(500);
    if (!problem.text().contains("UTF-8")) {
      assertThat(problem.line()).isPresent();
    }
  }

  private static Object read(Path file) {
    return file.getFileName().toString().startsWith("design-")
        ? new DesignReader(Example.VOCABULARY).read(file)
        : new SiteReader(Example.VOCABULARY).read(file);
  }

  /** The message, without the folder in which this machine keeps the test files. */
  private static String told(IntakeException refused) {
    String text = refused.getMessage().replace(FOLDER + "/", "") + "\n";
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  static List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.endsWith(".expected"))
          .sorted()
          .toList();
    }
  }
}
