package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The house rules of a place: the example that ships, an invented building department's. */
class HouseOfPlaceTest {
  private static final String PLACE = "scenarios/house-rules/alder-creek";
  private static final String SITE = "scenarios/mower-lane.yaml";

  @TempDir private Path folder;

  @Test
  void its_least_values_raise_those_of_the_site_file_and_both_are_told() {
    String why = said("why", SITE, "frost", "--house-rules", PLACE);

    assertThat(why)
        .contains("3'-6\"; the base has 2'-6\".")
        .contains("The building department asks for 3'-6\"; the site file says 2'-6\".")
        .contains(
            "house rule (authority.csv), by Alder Creek Building Department, because footings above"
                + " 42 in heaved here]");
  }

  @Test
  void a_site_file_that_asks_for_more_keeps_it_and_one_that_says_nothing_takes_the_places() {
    String more =
        said("why", SITE, "frost", "--house-rules", PLACE, "--set", "site.climate.frost-depth=4ft");
    String none =
        said(
            "why",
            "scenarios/mower-lane.yaml",
            "frost",
            "--house-rules",
            PLACE,
            "--set",
            "site.climate={hardiness-zone: 7}");

    assertThat(more).contains("4'-0\"").doesNotContain("climate.frost.authority");
    assertThat(none).contains("3'-6\"").contains("The building department asks for 3'-6\"; the");
  }

  @Test
  void every_sheet_says_where_a_standard_is_left_and_on_what_basis() {
    for (String reader : new String[] {"client", "builder", "engineer"}) {
      assertThat(said("propose", SITE, "--house-rules", PLACE, "--for", reader))
          .as(reader)
          .contains("28 in", "24 in", "Ordinance 12 on garden structures");
    }
  }

  @Test
  void the_lot_line_and_the_height_that_needs_a_permit_are_told() {
    String low = said("propose", SITE, "--house-rules", PLACE);
    String high = said("propose", SITE, "--house-rules", PLACE, "--set", "walkway.headroom=9 ft");

    assertThat(low).contains("The building department asks for 5'-0\" to the lot line.");
    assertThat(high).contains("Here anything over 9'-0\" needs a permit: get it before you dig.");
    assertThat(said("propose", SITE)).doesNotContain("lot line.", "needs a permit:");
  }

  @Test
  void what_a_house_wrote_wrong_is_refused_with_its_file_and_line() throws IOException {
    refused("thumb.csv", "id,valu\nbay.longest,1\n", "thumb.csv:1: found 'valu'");
    refused("authority.csv", "id,value\nauthority.frost,1\n", "authority.csv:2: id: found");
    refused("demands.csv", "id,step\nx,1\n", "demands.csv:2: ");
    refused("soils.csv", "id,friction_ratio\nsand,7\n", "soils.csv:2: friction_ratio: found '7'");
    refused("live.csv", "id,value\nlive.canopy,9\n", "live.csv:2: value: found '9'");
  }

  private void refused(String file, String text, String said) throws IOException {
    Path house = Files.createDirectories(folder.resolve("house"));
    Path written = Files.writeString(house.resolve(file), text);
    Run run =
        Run.of("propose", SITE, "--house-rules", house.toString())
            .endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(said);
    Files.delete(written);
  }

  private static String said(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out().replaceAll("\\s+", " ");
  }
}
