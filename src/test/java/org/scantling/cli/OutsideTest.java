package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies outside the rules is named as that, never as a slip. */
class OutsideTest {
  @Test
  void a_refused_site_is_told_how_its_words_were_read() {
    Run run =
        Run.of("propose", "scenarios/too-much-snow.yaml", "--set", "site.soil=rocky")
            .endedWith(ExitStatus.NEEDS_ENGINEER);

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("How words of the file were read")
        .contains("The file calls the ground rocky. It is taken as layered rock");
  }

  private static final String SITE =
      """
      title: Long walk
      base: %s
      site:
        climate: { frost-depth: 30 in, ground-snow: 25 psf, wind-speed: 105 mph, exposure: B }
        soil: sandy-gravel
      walkway: { length: 14 ft 2 in, clear-width: 5 ft }
      planting: [ { vine: climbing-rose } ]
      """
          .formatted(Path.of("scenarios/base/rose-gate.yaml").toAbsolutePath());

  @TempDir private Path folder;

  private Run propose(String text, String... options) throws IOException {
    Path file = folder.resolve("site.yaml");
    Files.writeString(file, text);
    String[] args = new String[options.length + 2];
    args[0] = "propose";
    args[1] = file.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    return Run.of(args);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shape: curved | two straight rows",
        "shape: L | two straight rows",
        "curve: yes | two straight rows",
        "attached-to: house | held and loaded by the house",
        "attached: yes | held and loaded by the house",
        "lean-to: yes | held and loaded by the house",
        "roof: solid | an open top lets",
        "roof: louvered | an open top lets",
        "louvers: closing | an open top lets",
        "sides: leaning | upright posts",
        "rows: 1 | two rows",
        "posts: round | sawn timber",
        "swing: yes | several times their weight",
        "hammock: 2 | several times their weight",
        "load: hanging chair | several times their weight",
        "upper-floor: yes | four times the load",
        "top: deck on top | four times the load",
        "pool: barrier | rules of its own",
        "over: public way | allowed by the town",
        "carport: yes | hits a post",
      })
  void a_key_that_asks_for_it_is_answered_in_one_sentence(String line, String because)
      throws IOException {
    Run run = propose(SITE + line + "\n").endedWith(ExitStatus.NEEDS_ENGINEER);

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("site.yaml:8:", "is outside these rules, because", because, "this is for");
    assertThat(run.out().lines()).allMatch(each -> each.length() <= 80 || !each.contains(" "));
    assertThat(run.err()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "peat, gives way",
    "fill, nobody knows",
    "Fill dirt, nobody knows",
    "muck, gives way"
  })
  void ground_that_no_table_values_is_a_case_for_an_engineer(String soil, String because)
      throws IOException {
    assertThat(
            propose(SITE.replace("sandy-gravel", soil))
                .endedWith(ExitStatus.NEEDS_ENGINEER)
                .out()
                .replaceAll("\\s+", " "))
        .contains("site.soil: " + soil + " is outside these rules", because, "soils engineer");
  }

  @Test
  void a_program_reads_it_as_JSON() throws IOException {
    assertThat(propose(SITE + "roof: solid\n", "--format", "json").endedWith(3).out())
        .contains("\"schema\" : \"scantling/outside/1\"", "\"status\" : \"needs-engineer\"")
        .contains("\"field\" : \"roof\"", "\"line\" : 8");
  }

  @Test
  void what_else_is_wrong_with_the_file_is_told_beside_it() throws IOException {
    Run run = propose(SITE.replace("5 ft", "5") + "swing: yes\n").endedWith(3);

    assertThat(run.out()).contains("swing: yes is outside");
    assertThat(run.err()).contains("walkway.clear-width");
  }

  @ParameterizedTest
  @ValueSource(strings = {"roof: none", "swing: no", "attached: false"})
  void who_says_that_there_is_none_is_asked_to_leave_it_out(String line) throws IOException {
    assertThat(propose(SITE + line + "\n").endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("(unknown)", "Maybe leave it out?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Swing Lane garden",
        "Pool Street",
        "The round garden",
        "House on the hill",
        "Deck Avenue 4",
        "Curved Lane",
        "Louverne cottage"
      })
  void a_title_that_is_a_name_means_nothing(String title) throws IOException {
    assertThat(propose(SITE.replace("Long walk", title)).endedWith(ExitStatus.ANSWERED).out())
        .doesNotContain("outside these rules");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Lean-to by the barn", "Round posts, long walk", "Pool fence walk"})
  void a_title_that_says_it_is_answered_with_what_was_taken_for_granted(String title)
      throws IOException {
    assertThat(
            propose(SITE.replace("Long walk", title))
                .endedWith(ExitStatus.ANSWERED)
                .out()
                .replaceAll("\\s+", " "))
        .contains("The title says", "stands by itself", "outside these rules, because");
  }

  @Test
  void an_assumed_reading_is_told_in_the_answer() throws IOException {
    assertThat(
            propose(SITE.replace("sandy-gravel", "loam"))
                .endedWith(ExitStatus.ANSWERED)
                .out()
                .replaceAll("\\s+", " "))
        .contains("The file calls the soil loam. It is taken as clay");
  }
}
