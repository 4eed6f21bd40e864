package org.scantling.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.cli.Run;
import org.scantling.reasons.Question;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/**
 * {@code why SITE SUBJECT --keep OPTION} over all subjects, options and scenarios: an answer, a
 * refusal or a case for an engineer, never a fault. A run takes some of them, in an order that a
 * seed shuffles, more where slow tests run; {@code -DkeepSweep=all} takes all, which is some hours.
 */
class KeptAnswersTest {
  private static final boolean ALL = "all".equals(System.getProperty("keepSweep"));
  private static final long SEED = Long.getLong("keepSeed", 4);

  /** One question to the program. */
  private record Asked(String site, String subject, String option) {
    String[] words() {
      return new String[] {"why", site, subject, "--keep", option};
    }
  }

  @Test
  void every_wish_is_answered_or_refused() throws IOException {
    answeredOrRefused(3);
  }

  @Test
  @Tag("slow")
  void many_more_wishes_are_answered_or_refused() throws IOException {
    answeredOrRefused(ALL ? Integer.MAX_VALUE : 40);
  }

  private static void answeredOrRefused(int most) throws IOException {
    List<Asked> all = all();
    Collections.shuffle(all, new Random(SEED));
    // The one that once ended the program comes first.
    all.add(0, new Asked("scenarios/same-place.yaml", "bays", "4"));
    List<String> faults = new ArrayList<>();
    for (Asked asked : all.subList(0, Math.min(most, all.size()))) {
      Run run = Run.of(asked.words());
      if (run.status() != 0 && run.status() != 2 && run.status() != 3) {
        faults.add(String.join(" ", asked.words()) + ": " + run.status() + " " + run.err());
      }
    }

    assertThat(faults).isEmpty();
  }

  private static List<Asked> all() throws IOException {
    List<Asked> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      for (Path site : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        for (Question question : Question.values()) {
          for (String option : options(question)) {
            all.add(new Asked(site.toString(), question.id(), option));
          }
        }
        for (String count : List.of("1", "2", "4", "9", "0", "60", "four")) {
          all.add(new Asked(site.toString(), "bays", count));
        }
      }
    }
    return all;
  }

  private static List<String> options(Question question) {
    Tables tables = Tables.load();
    if (question.numeric()) {
      return List.of("0", "1", "2", "7", "24 in", "5 ft", "2 m", "20 psf", "110 mph", "a lot");
    }
    return switch (question) {
      case POST_SIZE, CROSSBEAM_SIZE, RAIL_SIZE, BRACE_SIZE -> ids(tables.sizes().rows(), "");
      case HEADER_SIZE -> {
        List<String> sizes = new ArrayList<>(ids(tables.sizes().rows(), ""));
        sizes.addAll(ids(tables.sizes().rows(), "2-"));
        yield sizes;
      }
      case CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, BASE_JOINT ->
          ids(tables.joints().rows(), "");
      case SOIL -> ids(tables.soils().rows(), "");
      case VINE -> ids(tables.vines().rows(), "");
      case EXPOSURE -> List.of("B", "C", "D", "E");
      case SPECIES ->
          tables.designValues().rows().stream().map(each -> each.species()).distinct().toList();
      case GRADE ->
          tables.designValues().rows().stream().map(each -> each.grade()).distinct().toList();
      case BAYS, CROSSBEAMS_PER_BAY -> List.of("1", "2", "3", "4", "7", "12", "none");
      default ->
          List.of(
              "on-top",
              "paired",
              "level",
              "follows-ground",
              "stepped",
              "embedded",
              "bracket",
              "moment-base",
              "tamped-soil",
              "gravel",
              "concrete",
              "none",
              "knee-braces",
              "over-posts",
              "posts");
    };
  }

  private static List<String> ids(List<? extends TableRow> rows, String prefix) {
    return rows.stream().map(row -> prefix + row.id()).toList();
  }
}
