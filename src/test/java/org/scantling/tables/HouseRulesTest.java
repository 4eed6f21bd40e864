package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.quantity.Unit;
import org.scantling.reasons.SourceKind;

class HouseRulesTest {
  @TempDir Path folder;

  private Tables with(String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return HouseTables.load(folder);
  }

  @Test
  void an_empty_folder_changes_nothing() {
    assertThat(HouseTables.load(folder).thumbs().rows()).isEqualTo(Tables.load().thumbs().rows());
  }

  @Test
  void id_and_value_are_enough_to_override_and_the_rest_stays() {
    Tables tables = with("thumb.csv", "id,value\nbay.longest,120\n");
    NumberRow bay = tables.thumb("bay.longest");
    assertThat(bay.amount()).isEqualTo(120);
    assertThat(bay.measure().unit()).isEqualTo(Unit.INCH);
    assertThat(bay.statement()).isEqualTo("greatest bay");
    assertThat(bay.source().kind()).isEqualTo(SourceKind.HOUSE_RULE);
    assertThat(bay.source().text())
        .isEqualTo("house rule (thumb.csv), in place of: 144 in (common practice, no source)");
    assertThat(tables.thumbs().rows()).hasSameSizeAs(Tables.load().thumbs().rows());
    assertThat(tables.thumb("bay.least")).isEqualTo(Tables.load().thumb("bay.least"));
  }

  @Test
  void who_answers_for_a_row_and_why_is_told_with_both_values() {
    Tables tables =
        with(
            "design-values.csv",
            "id,bending_psi,shear_psi,who,why\n"
                + "hem-fir.no-2.dimension,700,140,Ann Oak,our yard grades for looks\n");
    assertThat(tables.designValues().row("hem-fir.no-2.dimension").source().text())
        .startsWith(
            "house rule (design-values.csv), by Ann Oak, because our yard grades for looks, in"
                + " place of: bending_psi 850, shear_psi 150 (");
    assertThat(tables.loosened()).isEmpty();
  }

  @Test
  void a_standard_is_loosened_only_with_a_basis_and_that_is_kept() {
    assertThatThrownBy(() -> with("live.csv", "id,value\nlive.canopy,8\n"))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith("live.csv:2: value: found '8', accepted is 10 psf or more, which")
        .hasMessageEndingWith("or a column basis that says on what it rests");
    assertThat(with("live.csv", "id,value\nlive.canopy,20\n").loosened()).isEmpty();

    Tables tables =
        with(
            "live.csv",
            "id,value,who,why,basis\nlive.canopy,8,Ann Oak,nobody climbs it,a letter of 2024\n");

    assertThat(tables.live("live.canopy").amount()).isEqualTo(8);
    assertThat(tables.live("live.canopy").source().text()).contains("on the basis of a letter");
    assertThat(tables.loosened())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.what()).isEqualTo("live load on the plan area of a patio cover");
              assertThat(List.of(one.ours(), one.theirs())).containsExactly("10 psf", "8 psf");
              assertThat(one.basis()).isEqualTo("a letter of 2024");
              assertThat(one.standard()).contains("California Residential Code");
            });
  }

  @Test
  void a_number_of_a_standard_without_a_safe_side_is_moved_with_a_basis_alone() {
    assertThatThrownBy(() -> with("thumb.csv", "id,value\nfooting.isolated-movement,0.4\n"))
        .hasMessageContaining("accepted is 0.5 in, which is what");
    assertThat(
            with("thumb.csv", "id,value,basis\nfooting.isolated-movement,0.4,tests\n").loosened())
        .hasSize(1);
  }

  @Test
  void what_no_standard_has_a_house_moves_as_it_likes() {
    assertThat(with("thumb.csv", "id,value\nbay.least,20\nbay.longest,200\n").loosened()).isEmpty();
  }

  @Test
  void every_number_of_a_standard_has_a_line_that_says_which_side_is_safe() {
    SafeSides sides = new SafeSides();
    TableReader reader = new TableReader(HouseRules.none());
    List<String> without = new ArrayList<>();
    for (TableFile table : TableFile.values()) {
      for (Row row : reader.rows(table)) {
        for (String column : table.columns()) {
          boolean number =
              row.optional(column).matches("\\d+(\\.\\d+)?(/\\d+)?")
                  && !column.endsWith("where")
                  && !List.of("id", "note", "rank", "words").contains(column);
          if (number
              && row.source().kind() == SourceKind.STANDARD
              && sides.of(table, row.text("id"), column).isEmpty()) {
            without.add(table.fileName() + " " + row.text("id") + " " + column);
          }
        }
      }
    }
    assertThat(without).isEmpty();
  }

  @Test
  void the_authority_of_a_place_has_its_values_in_a_file_of_their_own() {
    Tables tables = with("authority.csv", "id,value,who\nauthority.frost-depth,42,Alder Creek\n");

    assertThat(tables.authority().row("authority.frost-depth").amount()).isEqualTo(42);
    assertThat(tables.authority().row("authority.setback").amount()).isZero();
    assertThat(tables.elsewhere().authority().row("authority.frost-depth").amount()).isZero();
    assertThat(tables.authority().row("authority.frost-depth").source().text())
        .isEqualTo("house rule (authority.csv), by Alder Creek");
    assertThatThrownBy(() -> with("authority.csv", "id,value\nauthority.ground-snow,900\n"))
        .hasMessage("authority.csv:2: value: found '900', accepted is a number from 0 to 300");
    assertThatThrownBy(() -> with("authority.csv", "id,value\nauthority.snow,30\n"))
        .hasMessageStartingWith("authority.csv:2: id: found 'authority.snow', accepted is an id");
  }

  @Test
  void an_overridden_row_keeps_its_place() {
    Tables tables = with("thumb.csv", "id,value\nbay.longest,120\n");
    assertThat(tables.thumbs().rows().stream().map(NumberRow::id))
        .containsExactlyElementsOf(
            Tables.load().thumbs().rows().stream().map(NumberRow::id).toList());
  }

  @Test
  void a_house_rule_is_one_whatever_its_kind_says() {
    Tables tables = with("thumb.csv", "id,value,kind,status\nbay.longest,120,standard,memory\n");
    assertThat(tables.thumb("bay.longest").source().kind()).isEqualTo(SourceKind.HOUSE_RULE);
    assertThat(tables.thumb("bay.longest").source().fromMemory()).isFalse();
    assertThatThrownBy(() -> with("thumb.csv", "id,value,kind\nbay.longest,120,gospel\n"))
        .hasMessageStartingWith("thumb.csv:2: kind: found 'gospel', accepted is standard");
  }

  @Test
  void a_house_may_cite_its_own_sources() throws IOException {
    Files.writeString(folder.resolve("SOURCES.csv"), "key,citation\nours,Yard notes 2024\n");
    Tables tables = with("thumb.csv", "id,value,source,where\nbay.longest,120,ours,page 3\n");
    assertThat(tables.thumb("bay.longest").source().citation())
        .startsWith("house rule (thumb.csv), citing Yard notes 2024, page 3, in place of: ");
    Files.writeString(folder.resolve("SOURCES.csv"), "key,citation\nnds2018,Another book\n");
    assertThatThrownBy(() -> HouseTables.load(folder))
        .hasMessage("SOURCES.csv:2: key: found 'nds2018', accepted is each key once");
  }

  @Test
  void a_size_of_the_house_is_added_at_its_rank_and_can_be_used() {
    Tables tables =
        with(
            "sizes.csv",
            "id,market,member_class,thickness_in,width_in,nominal_thickness_in,nominal_width_in,"
                + "roles,rank,stock_family\n"
                + "3x6,north-america,dimension,2.5,5.5,3,6,crossbeam,45,2x\n");
    assertThat(tables.sizes("crossbeam", "north-america").stream().map(SizeRow::id))
        .containsSubsequence("2x8", "3x6", "2x10");
    assertThat(tables.size("3x6").source().text()).isEqualTo("house rule (sizes.csv)");
    assertThat(tables.designValues("hem-fir", "No.2", tables.size("3x6")).bendingPsi())
        .isEqualTo(850);
    assertThat(tables.factors().size("hem-fir", tables.size("3x6")).bendingFactor()).isEqualTo(1.3);
  }

  /** 90 mm is 3.543 in; 95x95 measures nearest, which is read from the band of a 4x4. */
  @Test
  void a_metric_size_is_added_by_its_name_and_market_alone() {
    Tables tables = with("sizes.csv", "id,market\n90x90,metric\n100x100,metric\n45x120,metric\n");

    assertThat(tables.size("90x90").thicknessIn()).isCloseTo(90 / 25.4, within(1e-9));
    assertThat(tables.size("90x90").roles()).contains("post", "header");
    assertThat(tables.size("90x90").nominalWidthIn()).isEqualTo(4);
    assertThat(tables.size("45x120").widthIn()).isCloseTo(120 / 25.4, within(1e-9));
    assertThat(tables.size("45x120").nominalWidthIn()).isEqualTo(6);
    assertThat(tables.sizes("post", "metric").stream().map(SizeRow::id))
        .containsSubsequence("90x90", "95x95", "100x100", "120x120");
    assertThat(tables.designValues("hem-fir", "No.2", tables.size("90x90")).bendingPsi())
        .isEqualTo(tables.designValues("hem-fir", "No.2", tables.size("95x95")).bendingPsi());
    assertThat(tables.stockLengths(tables.size("90x90")).longestIn() * 25.4)
        .isCloseTo(4800, within(0.1));
  }

  @Test
  void a_column_of_inches_takes_millimetres_with_their_unit() {
    Tables tables =
        with("sizes.csv", "id,thickness_in,width_in,roles\n100x100,98 mm,9.8 cm,post;header\n");
    assertThat(tables.size("100x100").market()).isEqualTo("metric");
    assertThat(tables.size("100x100").widthIn()).isCloseTo(98 / 25.4, within(1e-9));
    assertThat(tables.size("100x100").roles()).containsExactly("post", "header");

    Tables others = with("stock-lengths.csv", "id,lengths_in\nmetric.95,2400 mm;3.6 m;4200 mm\n");
    assertThat(others.stockLengths(others.size("95x95")).lengthsIn())
        .containsExactly(2400 / 25.4, 3600 / 25.4, 4200 / 25.4);
  }

  @Test
  void a_measure_that_is_none_is_refused_with_what_is_accepted() {
    assertThatThrownBy(
            () -> with("sizes.csv", "id,market,thickness_in\n90x90,metric,90 furlongs\n"))
        .hasMessageContaining("sizes.csv:2: thickness_in: found '90 furlongs'")
        .hasMessageContaining("millimeters with their unit, such as 90 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C16", "C24", "D30", "GL24h", "TR26", "MGP10", "F7", "S10"})
  void grades_of_other_codes_are_refused_with_the_reason(String grade) {
    assertThatThrownBy(
            () -> with("design-values.csv", "id,species,grade\nmine,hem-fir," + grade + "\n"))
        .isInstanceOf(TableException.class)
        .hasMessageContaining("This rule base has the design values and factors of the NDS alone");
    assertThat(OtherGrades.why("No.2")).isEmpty();
  }

  @Test
  void a_vine_of_the_house_is_added_only_whole() {
    assertThatThrownBy(() -> with("vines.csv", "id,wet_design_psf\nivy,6\n"))
        .isInstanceOf(TableException.class)
        .hasMessage(
            "vines.csv:2: weight_class: found nothing, accepted is a value: this column has no"
                + " holes");
  }

  @Test
  void an_unknown_id_is_refused_where_every_id_has_its_meaning() {
    assertThatThrownBy(() -> with("thumb.csv", "id,value\nbay.lengest,120\n"))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith(
            "thumb.csv:2: id: found 'bay.lengest', accepted is an id that this table has:"
                + " bay.stretch, bay.least, bay.longest");
  }

  @Test
  void a_check_can_be_made_stricter_but_not_laxer() {
    Tables tables = with("checks.csv", "id,limit_ratio\npost.bending,0.9\n");
    assertThat(tables.check("post.bending").limitRatio()).isEqualTo(0.9);
    assertThatThrownBy(() -> with("checks.csv", "id,limit_ratio\npost.bending,1.1\n"))
        .hasMessage(
            "checks.csv:2: limit_ratio: found '1.1', accepted is a number above zero and not above"
                + " 1");
  }

  @Test
  void the_record_of_a_base_never_eases_strength_whatever_a_house_says() {
    assertThat(with("checks.csv", "id,eased_by_record\npost.drift,no\n").check("post.drift"))
        .matches(row -> !row.easedByRecord());
    assertThatThrownBy(() -> with("checks.csv", "id,eased_by_record\npost.bending,yes\n"))
        .hasMessage(
            "checks.csv:2: eased_by_record: found 'yes', accepted is no: strength is never eased");
  }

  @Test
  void a_unit_may_not_change() {
    assertThatThrownBy(() -> with("thumb.csv", "id,value,unit\nbay.longest,10,ft\n"))
        .hasMessage(
            "thumb.csv:2: unit: found 'ft', accepted is in, as the row has that is"
                + " overridden");
  }

  @Test
  void a_bad_number_is_refused_when_the_folder_is_read() {
    assertThatThrownBy(() -> with("thumb.csv", "id,value\nbay.longest,10 ft\n"))
        .hasMessage("thumb.csv:2: value: found '10 ft', accepted is a number, such as 0.25 or 1/3");
    assertThatThrownBy(() -> with("thumb.csv", "id,value\nbay.longest,100\nbay.longest,90\n"))
        .hasMessage("thumb.csv:3: id: found 'bay.longest', accepted is each id once");
    assertThatThrownBy(() -> with("thumb.csv", "id,valu\nbay.longest,1\n"))
        .hasMessageStartingWith("thumb.csv:1: found 'valu', accepted is each of these columns");
  }

  @Test
  void a_thermal_value_of_the_house_is_a_house_rule_too() {
    Tables tables = with("soils.csv", "id,moisture_percent\nsand,12\n");
    SoilRow.Thermal thermal = tables.soil("sand").thermal().orElseThrow();
    assertThat(thermal.moisturePercent()).isEqualTo(12);
    assertThat(thermal.dryDensityPcf()).isEqualTo(120);
    assertThat(thermal.source().kind()).isEqualTo(SourceKind.HOUSE_RULE);
  }

  @Test
  void anything_but_tables_of_known_names_is_refused() {
    assertThatThrownBy(() -> with("rules.drl", "rule x when then end"))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith(
            "rules.drl: found 'rules.drl', accepted is tables of these names only:"
                + " design-values.csv");
    assertThatThrownBy(() -> HouseTables.load(folder.resolve("nowhere")))
        .isInstanceOf(TableException.class)
        .hasMessageEndingWith("nowhere: found 'no folder', accepted is a folder of tables");
  }

  @Test
  void a_folder_inside_the_folder_is_refused_even_with_a_known_name() throws IOException {
    Files.createDirectory(folder.resolve("thumb.csv"));
    assertThatThrownBy(() -> HouseTables.load(folder))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith("thumb.csv: found 'thumb.csv', accepted is tables");
  }

  @Test
  void a_file_in_place_of_the_folder_is_refused() throws IOException {
    Path file = Files.writeString(folder.resolve("x"), "");
    assertThatThrownBy(() -> HouseTables.load(file))
        .isInstanceOf(TableException.class)
        .hasMessageEndingWith("accepted is a folder of tables");
  }
}
