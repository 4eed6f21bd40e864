package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What builders type wrong on the command line. The answer names what would be right, and the line
 * with that in it is understood.
 */
class CommandSlipsTest {
  private static final String HELD = "_";
  private static final Path FILE = Path.of("src/test/resources/cli/slips.txt");

  /**
   * @param line as it is typed
   * @param wrong the part of it that is wrong
   * @param right what stands there in the line that is right
   */
  record Slip(String line, String wrong, String right) {
    String[] typed() {
      return words(line);
    }

    String[] mended() {
      // A length and its unit are one word where a shell hands them over.
      return words(line.replace(wrong, right.replaceAll("(?<=[0-9]) ", HELD)));
    }

    private static String[] words(String line) {
      return Arrays.stream(line.split(" "))
          .map(word -> word.replace(HELD, " "))
          .map(word -> word.equals("SITE") ? "scenarios/same-place.yaml" : word)
          .map(word -> word.equals("BASE") ? "scenarios/base/rose-gate.yaml" : word)
          .toArray(String[]::new);
    }
  }

  static List<Slip> slips() throws IOException {
    try (Stream<String> lines = Files.lines(FILE)) {
      return lines
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split("\\|"))
          .map(cells -> new Slip(cells[0], cells[1], cells[2]))
          .toList();
    }
  }

  @Test
  void there_are_many() throws IOException {
    assertThat(slips()).hasSizeGreaterThan(40);
  }

  @ParameterizedTest
  @MethodSource("slips")
  void the_answer_names_what_is_right_and_that_is_understood(Slip slip) {
    Run wrong = Run.of(slip.typed()).endedWith(ExitStatus.WRONG_INPUT);
    String named = slip.right().replaceAll("^=|SITE|=$|^length=|BASE", "").strip();
    String last = named.substring(named.lastIndexOf('.') + 1);

    assertThat(wrong.out()).isEmpty();
    assertThat(wrong.err().replaceAll("\\s+", " ")).contains(last);
    assertThat(Run.of(slip.mended()).status()).isNotEqualTo(ExitStatus.WRONG_INPUT);
  }
}
