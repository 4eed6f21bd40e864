package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A base design that nobody says was ever built is a drawing, whoever reads about it. */
class UnbuiltBaseTest {
  private static final String SITE = "src/test/resources/rulecases/sites/drawn-only.yaml";
  private static final String STANDS =
      "(?is).*\\b(proven|record|stood|stands since|where it stands|has served)\\b.*";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "propose SITE",
        "propose SITE --format markdown",
        "propose SITE --set site.climate.ground-snow=95psf",
        "propose SITE --set walkway.headroom=11ft6in",
        "propose SITE --list order",
        "propose SITE --list cut-list",
        "why SITE posts",
        "why SITE posts --for client",
        "why SITE headers --for client",
        "why SITE crossbeams --for client",
        "why SITE holes --for engineer",
        "why SITE bays --for client",
        "why SITE posts --keep 6x6",
        "limits SITE crossbeams",
        "check SITE --design src/test/resources/rulecases/sites/base/drawn-arbour.yaml",
        "compare SITE --set walkway.length=30ft",
      })
  void nothing_says_that_it_is_proven(String line) {
    List<String> words = List.of(line.replace("SITE", SITE).split(" "));

    Run run = Run.of(words.toArray(String[]::new));

    assertThat(run.status()).as(run.err()).isIn(ExitStatus.ANSWERED, ExitStatus.NEEDS_ENGINEER);
    assertThat(run.out().lines()).isNotEmpty().noneMatch(each -> each.matches(STANDS));
  }

  @Test
  void the_proposal_says_that_it_is_a_drawing() {
    assertThat(Run.of("propose", SITE).endedWith(ExitStatus.ANSWERED).out())
        .contains("The base is a drawing");
    assertThat(Run.of("propose", "scenarios/mower-lane.yaml").endedWith(ExitStatus.ANSWERED).out())
        .contains("which has stood since 2007")
        .doesNotContain("The base is a drawing");
  }

  @Test
  void its_record_cannot_be_asked_for() {
    Run run = Run.of("propose", SITE, "--set", "preferences.basis=proven");

    assertThat(run.endedWith(ExitStatus.WRONG_INPUT).out()).isEmpty();
    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("preferences.basis: proven must be published")
        .contains("Sketched rose gate has no 'proven:' part");
  }
}
