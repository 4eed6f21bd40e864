package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices from the sheet that is printed to the estimate that is written. */
class PricesTest {
  private static final String SITE = "scenarios/bean-row.yaml";

  @TempDir private Path folder;

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static String answered(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out();
  }

  /** The sheet of a site with one price in every line. */
  private String filled(String price) throws IOException {
    String sheet = answered("prices", SITE).replaceFirst(",,,", "," + price + ",CAD,");
    return Files.writeString(folder.resolve("prices.csv"), sheet.replace(",,,", "," + price + ",,"))
        .toString();
  }

  @Test
  void the_sheet_has_every_item_and_no_price_and_is_read_as_it_stands() throws IOException {
    String sheet = answered("prices", SITE);

    assertThat(sheet)
        .startsWith("# Prices for: Bean row behind the stable\n")
        .contains("\nitem,unit,price,currency,note\n")
        .contains("\n6x6x14 UC4B southern-pine No.2,each,,,")
        .contains("\nlabor-hour,hour,,,labor\n", "\nplant-hops,each,,,", "\ntax,percent,,,");
    Path empty = Files.writeString(folder.resolve("empty.csv"), sheet);
    assertThat(flat(answered("propose", SITE, "--prices", empty.toString())))
        .contains("Cost and work", "Nothing is priced. 80 1/2 hours of work");
  }

  @Test
  void without_a_site_everything_that_can_be_priced_is_listed() throws IOException {
    String all = answered("prices");

    assertThat(all)
        .contains("\n4x4x8,each,,,any length sold\n", "\n45x95x", "\nstep-hanger,each,,,")
        .contains("\ngravel,50 lb bag,,,\"or by the 25 kg bag, cu yd, cu ft, m3\"\n");
    Path empty = Files.writeString(folder.resolve("all.csv"), all);
    answered("propose", SITE, "--prices", empty.toString());
  }

  @Test
  void a_sheet_that_is_filled_leaves_nothing_out() throws IOException {
    String prices = filled("1");

    assertThat(flat(answered("propose", SITE, "--prices", prices)))
        .contains("hours of work, all hands together, by common practice.")
        .contains("Everything on the buying list is priced.")
        .doesNotContain("Without:");
    assertThat(answered("propose", SITE, "--prices", prices, "--format", "json"))
        .contains("\"currency\" : \"CAD\"", "\"without\" : [ ]", "\"workHours\" : 80.5");
  }

  @Test
  void without_prices_a_proposal_says_nothing_of_money_and_its_json_has_the_hours() {
    assertThat(answered("propose", SITE)).doesNotContain("Cost and work", "hours of work");
    assertThat(answered("propose", SITE, "--format", "json"))
        .contains("\"workHours\" : 80.5")
        .doesNotContain("\"cost\"");
  }

  @Test
  void the_buying_list_has_a_column_of_costs_and_names() throws IOException {
    String prices = filled("2");

    assertThat(answered("propose", SITE, "--prices", prices, "--list", "buying"))
        .containsPattern("buy +what +needed +spare +for +cost");
    assertThat(answered("propose", SITE, "--prices", prices, "--list", "buying", "--format", "csv"))
        .contains("rated_down_lb,key\n", ",18.00,UC4B,", ",6x6x14 UC4B southern-pine No.2\n");
  }

  @Test
  void the_folder_holds_the_estimate_for_whom_it_is() throws IOException {
    String prices = filled("3");
    Path out = folder.resolve("job");

    answered("propose", SITE, "--prices", prices, "--out", out.toString());
    assertThat(Files.readString(out.resolve("estimate.md")))
        .startsWith("# Estimate: Bean row")
        .doesNotContain("Markup");
    answered("propose", SITE, "--prices", prices, "--out", out.toString(), "--estimate", "builder");
    assertThat(Files.readString(out.resolve("estimate.md"))).contains("Markup, 3 %");
    assertThat(Files.readString(out.resolve("estimate.csv"))).contains("sum,markup,");
    answered("propose", SITE, "--out", out.toString());
    assertThat(out.resolve("estimate.md")).doesNotExist();
  }

  @Test
  void a_comparison_has_the_cost_what_it_leaves_out_and_the_hours() throws IOException {
    Path prices =
        Files.writeString(
            folder.resolve("p.csv"), "item,unit,price,currency\nlabor-hour,hour,40,USD\n");
    String[] asked = {"compare", SITE, "--set", "site.soil=clay", "--prices", prices.toString()};

    assertThat(answered(asked)).contains("Cost and work").containsPattern("Cost +3,220.00 USD ");
    assertThat(Run.of("compare", SITE, "--set", "site.soil=clay", "--format", "json").out())
        .doesNotContain("workHours");
  }

  @Test
  void a_house_has_hours_of_its_own() throws IOException {
    Files.writeString(folder.resolve("work.csv"), "id,minutes\nnotch.cut,6\n");
    String own = folder.toString();

    // Forty notches at 6 instead of 12 minutes: four hours less.
    assertThat(answered("propose", SITE, "--format", "json", "--house-rules", own))
        .contains("\"workHours\" : 76.5");
    Files.writeString(folder.resolve("work.csv"), "id,minutes\nnotch.cut,-6\n");
    assertThat(
            flat(
                Run.of("propose", SITE, "--house-rules", own)
                    .endedWith(ExitStatus.WRONG_INPUT)
                    .err()))
        .contains("work.csv:2: minutes: found '-6', accepted is a number from 0 to 2880");
  }

  @Test
  void a_list_that_cannot_be_used_writes_nothing() throws IOException {
    Path prices =
        Files.writeString(
            folder.resolve("p.csv"),
            "item,unit,price,currency,note\nstakes,each,1,USD,\npad,each,-2,CAD,\n");
    Path out = folder.resolve("job");
    Run run =
        Run.of("propose", SITE, "--prices", prices.toString(), "--out", out.toString())
            .endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.out()).isEmpty();
    assertThat(flat(run.err()))
        .contains("p.csv:2: item: found 'stakes'", "p.csv:3: price: found '-2'")
        .contains("p.csv:3: currency: found 'CAD', accepted is one currency");
    assertThat(out).doesNotExist();
  }

  @Test
  void a_list_and_an_estimate_are_not_shown_together() {
    assertThat(
            flat(
                Run.of("propose", SITE, "--list", "buying", "--estimate", "client")
                    .endedWith(ExitStatus.WRONG_INPUT)
                    .err()))
        .contains("--list and --estimate both say what is shown: name one of them");
  }
}
