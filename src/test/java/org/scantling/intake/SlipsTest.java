package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.tables.Tables;

/**
 * What builders get wrong in a file by hand. The answer leads to a file that is read, by nothing
 * but what it suggests, at the second try at the latest; and whatever is suggested may be typed.
 */
class SlipsTest {
  private static final Vocabulary VOCABULARY = Vocabulary.of(Tables.load());
  private static final int ROUNDS = 2;
  private static final String SITE =
      """
      title: Long walk
      base: base/gate-arbour.yaml
      site:
        climate: { frost-depth: 42 in, ground-snow: 30 psf, wind-speed: 115 mph, exposure: B }
        soil: sandy-gravel
        slope: 3 %
      walkway:
        length: 24 ft
        clear-width: 6 ft
        users: [ two-abreast, wheelbarrow ]
        headroom: 7 ft
      planting: [ { vine: wisteria } ]
      materials: { species: southern-pine, grade: No.2 }
      preferences: { footing: embedded, keep: look }
      """;
  private static final String BASE =
      """
      title: Gate
      posts:
        size: 4x4
        row-spacing: 60 in
        bay: 46 in
        bays: 2
        height: 90 in
        embedment: 32 in
        footing: embedded
        backfill: gravel
      headers:
        style: on-top
        size: 4x6
        overhang: 12 in
        notch: 0 in
      crossbeams:
        size: 2x6 # planed
        count: 7
        overhang: 12 in
        notch: 0.5 in
      side-panels: none
      braces: none
      """;

  /** A file with one slip in it. */
  record Slip(String kind, String right, String wrong) {
    String text() {
      String good = kind.equals("site") ? SITE : BASE;
      assertThat(good).contains(right);
      return good.replace(right, wrong);
    }

    /** What is wrong with a text of the kind; empty where it is read. */
    Optional<List<Problem>> problems(String text) {
      SourceText source = new SourceText("file.yaml", 1, text, Example.folder("good"));
      try {
        if (kind.equals("site")) {
          new SiteReader(VOCABULARY).read(source, List.of());
        } else {
          new DesignReader(VOCABULARY).read(source);
        }
        return Optional.empty();
      } catch (IntakeException refused) {
        return Optional.of(refused.problems());
      }
    }
  }

  static List<Slip> slips() throws IOException {
    try (Stream<String> lines = Files.lines(Example.folder("slips.txt"))) {
      return lines
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.replace("\\n", "\n").replace("\\t", "\t").split("\\|", 3))
          .map(cells -> new Slip(cells[0], cells[1], cells[2]))
          .toList();
    }
  }

  @Test
  void there_are_many_and_the_files_without_them_are_right() throws IOException {
    assertThat(slips()).hasSizeGreaterThan(60);
    assertThat(new Slip("site", "a", "a").problems(SITE)).isEmpty();
    assertThat(new Slip("base", "a", "a").problems(BASE)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("slips")
  void the_answer_leads_to_a_file_that_is_read(Slip slip) {
    String text = slip.text();
    List<Problem> found = slip.problems(text).orElseGet(() -> fail("is read as it stands"));
    StringBuilder told = new StringBuilder();
    for (int round = 0; round < ROUNDS && !found.isEmpty(); round++) {
      found.forEach(problem -> told.append(problem.text()).append('\n'));
      text = mended(text, found);
      found = slip.problems(text).orElse(List.of());
    }

    assertThat(found).as("%safter which%n%s%nis told", told, text).isEmpty();
  }

  /** What is wrong with lines is mended first; the others are then looked at as they stand. */
  private static String mended(String text, List<Problem> problems) {
    String mended = text;
    for (Problem problem : problems) {
      if (Suggested.isOfALine(problem)) {
        mended = Suggested.line(mended, problem);
      }
    }
    return Suggested.applied(
        mended, problems.stream().filter(each -> !Suggested.isOfALine(each)).toList());
  }

  @ParameterizedTest
  @MethodSource("slips")
  void whatever_is_offered_may_be_typed(Slip slip) {
    List<Problem> found = slip.problems(slip.text()).orElseThrow();
    if (found.stream().anyMatch(Suggested::isOfALine)) {
      return;
    }
    String keys =
        Suggested.applied(
            slip.text(), found.stream().filter(each -> Suggested.values(each).isEmpty()).toList());
    for (Problem problem : found) {
      for (String value : Suggested.values(problem)) {
        String text = Suggested.applied(keys, problem, value);
        List<Problem> left = slip.problems(text).orElse(List.of());

        assertThat(left)
            .as("%s: %s%n%s", problem.text(), value, text)
            .noneMatch(each -> each.field().equals(problem.field()));
      }
    }
  }
}
