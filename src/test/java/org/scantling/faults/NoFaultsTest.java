package org.scantling.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Thousands of files with slips in them, and sites whose values are all allowed: the program
 * answers or refuses, and never ends by a fault of its own, late, or with signs that drive a
 * terminal. {@code -Dtrials=200000} draws that many, a tenth of them valid sites; {@code
 * -DtrialSeed=N} draws others; {@code -Xmx512m} shows that this much memory is enough.
 */
@Isolated("what a run takes is measured")
class NoFaultsTest {
  private static final int FEW = 150;
  private static final int TRIALS = Integer.getInteger("trials", 900);
  private static final long SEED = Long.getLong("trialSeed", 1);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Trials.Kind.class)
  void no_file_ends_the_program(Trials.Kind kind) {
    assertThat(failures(kind, SEED + 1, FEW)).isEmpty();
  }

  @Tag("slow")
  @ParameterizedTest
  @EnumSource(Trials.Kind.class)
  void no_file_of_many_ends_the_program(Trials.Kind kind) {
    assertThat(failures(kind, SEED, TRIALS)).isEmpty();
  }

  private List<String> failures(Trials.Kind kind, long seed, int trials) {
    return new FaultDriver(folder).run(kind, seed, trials * share(kind) / 10);
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
