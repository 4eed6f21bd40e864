package org.scantling.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Thousands of files with slips in them, and sites whose values are all allowed: the program
 * answers or refuses, and never ends by a fault of its own, late, or with signs that drive a
 * terminal. {@code -Dtrials=200000} draws that many, a tenth of them valid sites; {@code
 * -DtrialSeed=N} draws others; {@code -Xmx512m} shows that this much memory is enough.
 */
class NoFaultsTest {
  private static final int TRIALS = Integer.getInteger("trials", 900);
  private static final long SEED = Long.getLong("trialSeed", 1);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Trials.Kind.class)
  void no_file_ends_the_program(Trials.Kind kind) {
    List<String> failures = new FaultDriver(folder).run(kind, SEED, TRIALS * share(kind) / 10);

    assertThat(failures).isEmpty();
  }

  /** Tenths of all trials. */
  private static int share(Trials.Kind kind) {
    return switch (kind) {
      case VALID_SITE -> 1;
      case SCRIBBLED_SITE -> 5;
      case SCRIBBLED_YARD, HOUSE_ROWS -> 2;
    };
  }
}
