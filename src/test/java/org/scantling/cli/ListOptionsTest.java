package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be asked of the lists, and what is refused before anything is worked out. */
class ListOptionsTest {
  private static final String SITE = "scenarios/same-place.yaml";

  @TempDir private Path folder;

  /** What is said, without the line breaks of the terminal. */
  private static String wrong(String... args) {
    Run run = Run.of(args).endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).doesNotContain("Exception", "\tat ");
    return run.err().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"cut-list", "CUT-LIST", "buying", "set-out", "order", "climbers", "upkeep"})
  void a_list_goes_by_its_name(String name) {
    assertThat(Run.of("propose", SITE, "--list", name).endedWith(ExitStatus.ANSWERED).out())
        .contains(": A second gate in the same wall\n");
  }

  @Test
  void an_unknown_list_is_told_with_those_that_there_are() {
    assertThat(wrong("propose", SITE, "--list", "shopping"))
        .contains("cut-list, buying, set-out, order", "climbers or upkeep", "shopping");
  }

  @Test
  void csv_is_for_lists() {
    assertThat(wrong("propose", SITE, "--format", "csv"))
        .contains("--format csv is for lists: name one, such as --list cut-list");
  }

  @Test
  void yaml_is_not_for_lists() {
    assertThat(wrong("propose", SITE, "--list", "buying", "--format", "yaml"))
        .contains("--format yaml is the proposal as a design file");
  }

  @Test
  void a_yard_without_a_list_to_buy_is_refused() {
    assertThat(wrong("propose", SITE, "--yard", "yard.csv"))
        .contains("--yard is for buying: ask for --list buying or --out as well");
  }

  @Test
  void a_yard_that_cannot_be_read_writes_nothing() throws IOException {
    Path yard = folder.resolve("yard.csv");
    Files.writeString(yard, "size,length,price\n4x4,10 ft,-5\n4y4,8 ft,5\n2x4,-8 ft,5\n");
    Path out = folder.resolve("job");

    String said = wrong("propose", SITE, "--out", out.toString(), "--yard", yard.toString());

    assertThat(said)
        .contains(
            ":2: price: found '-5', accepted is an amount such as 12.95 or $1,295.00, or nothing")
        .contains(":3: size: found '4y4', accepted is a size that the sizes table has")
        .contains(":4: length: found '-8 ft', accepted is from 1 ft to 60 ft");
    assertThat(out).doesNotExist();
  }

  @Test
  void a_yard_with_prices_gives_the_cost_and_one_without_gives_none() throws IOException {
    Path yard = folder.resolve("yard.csv");
    Files.writeString(
        yard,
        "size,length,price\n4x4,12 ft,16.00\n4x6,10 ft,21.00\n2x6,8 ft,8.50\n2x4,8 ft,5.50\n");
    String[] asked = {"propose", SITE, "--list", "buying", "--yard", yard.toString()};

    // The line that says it is longer by "delivered, with all bags", so it may break anywhere.
    assertThat(Run.of(asked).endedWith(ExitStatus.ANSWERED).out().replaceAll("\\s+", " "))
        .contains("by the yard's list")
        .doesNotContain("no prices given");
    Files.writeString(yard, "size,length\n4x4,12 ft\n4x6,10 ft\n2x6,8 ft\n2x4,8 ft\n");
    assertThat(Run.of(asked).endedWith(ExitStatus.ANSWERED).out().replaceAll("\\s+", " "))
        .contains("no prices given");
  }

  @Test
  void the_sheet_in_a_folder_carries_every_caution_and_assumption() throws IOException {
    Path out = folder.resolve("job");
    String site = "scenarios/everything-at-once.yaml";
    Run run = Run.of("propose", site, "--format", "markdown", "--out", out.toString());

    String sheet = PageWords.of(out.resolve("builder.html"));
    String said = run.endedWith(ExitStatus.ANSWERED).out();
    String caveats =
        said.substring(said.indexOf("## Take care")).replaceAll("(?m)^(?:## |- )|[*]{2}", "");
    assertThat(caveats).contains("Assumed, because the file does not say", "utility locator");
    assertThat(sheet).contains(PageWords.plain(caveats));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cut-list", "buying", "set-out", "order", "climbers", "upkeep"})
  void one_list_alone_says_that_cautions_go_with_it(String list) {
    assertThat(Run.of("propose", SITE, "--list", list).endedWith(ExitStatus.ANSWERED).out())
        .contains("the cautions and assumptions");
  }

  @Test
  void a_folder_that_is_not_ours_is_refused_and_left_as_it_was() throws IOException {
    Files.writeString(folder.resolve("buying.csv"), "mine\n");

    assertThat(wrong("propose", SITE, "--out", folder.toString()))
        .contains("buying.csv: was not written by scantling");
    assertThat(folder.resolve("buying.csv")).hasContent("mine\n");
    assertThat(folder.toFile().list()).containsExactly("buying.csv");
  }
}
