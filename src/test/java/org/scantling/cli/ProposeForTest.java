package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.scantling.words.Jargon;
import org.scantling.words.ReadingEase;

/** The proposal as text for the client and for the engineer. */
class ProposeForTest {
  private static final String SITE = "scenarios/mower-lane.yaml";
  private static final double PLAIN_ENGLISH = 60;

  private static String out(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void the_client_reads_what_it_looks_like_what_changes_and_how_it_is_kept() {
    String text = out("propose", SITE, "--for", "client");

    // What it ends with names the version.
    Golden.compare(
        "propose-mower-lane-client.txt", text.replaceAll("(?s)\\nWorked out by scantling.*", ""));
    String prose = text.replaceAll("(?m)^[-=]+$", "");
    assertThat(prose.replaceAll("(?s)Take care.*", "")).doesNotContainPattern(Jargon.PATTERN);
    assertThat(ReadingEase.of(prose).score()).isGreaterThan(PLAIN_ENGLISH);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void bays_that_differ_are_told_from_the_shortest_to_the_longest() {
    assertThat(flat(out("propose", "scenarios/past-the-pipe.yaml", "--for", "client")))
        .contains("stand 3 ft 8 in to 5 ft 2 in apart along the walk");
  }

  /** No heading stands over a drawing that is not there. */
  @Test
  void headings_of_drawings_are_left_out_in_text() {
    assertThat(out("propose", SITE, "--for", "client")).doesNotContain("As you walk in");
  }

  @Test
  void the_engineer_reads_every_working() {
    String text = flat(out("propose", SITE, "--for", "engineer", "--format", "markdown"));

    assertThat(text).contains("1807.3.2.1").contains("Symbols");
  }

  @Test
  void programs_and_yards_get_the_same_for_everybody() {
    assertThat(out("propose", SITE, "--for", "client", "--format", "json"))
        .isEqualTo(out("propose", SITE, "--format", "json"));
  }

  /** A refusal is a refusal for everybody. */
  @Test
  void where_nothing_is_proposed_the_reason_is_told() {
    Run run = Run.of("propose", "scenarios/too-much-snow.yaml", "--for", "client");

    run.endedWith(ExitStatus.NEEDS_ENGINEER);
    assertThat(run.out()).contains("This is a case for a licensed engineer.");
  }

  @Test
  void the_ways_to_build_it_are_put_on_the_clients_page_where_asked() {
    assertThat(out("propose", "scenarios/bean-row.yaml", "--for", "client", "--options"))
        .contains("What you can choose");
  }
}
