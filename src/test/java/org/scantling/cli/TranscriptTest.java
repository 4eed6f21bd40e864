package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole visits: what was typed, what was said, and the file that came of it. */
class TranscriptTest {
  /** Named alike on every machine, since a path is part of what is said. */
  private static final Path FOLDER = Path.of("target/visits");

  @ParameterizedTest
  @CsvSource({"long-walk", "court", "hill", "slope", "hop-gate"})
  void a_visit_reads_as_it_was_read_before(String name) throws IOException {
    Path folder = FOLDER.resolve(name);
    Path file = folder.resolve(name + ".yaml");
    copyBases(folder.resolve("base"));
    Files.deleteIfExists(file);
    Files.deleteIfExists(folder.resolve(name + ".yaml.visit"));
    String lines = Files.readString(Path.of("src/test/resources/visits/" + name + ".txt"));
    boolean stands = name.equals("hop-gate");

    Run run =
        stands
            ? Run.answering(lines, "start", "--base", file.toString())
            : Run.answering(lines, "start", file.toString());

    run.endedWith(ExitStatus.ANSWERED);
    Golden.compare(
        "visits/" + name + ".txt", run.out() + "\n--- " + file + "\n" + Files.readString(file));
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(folder.resolve(name + ".yaml.visit")).doesNotExist();
  }

  private static void copyBases(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> files = Files.list(Path.of("scenarios/base"))) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }
}
