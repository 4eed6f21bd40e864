package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Design values, sizes, lengths and factors: full grids, declared holes, order by physics. */
class TimberTablesTest {
  private static final List<String> SPECIES =
      List.of(
          "southern-pine",
          "douglas-fir-larch",
          "hem-fir",
          "spruce-pine-fir",
          "western-cedars",
          "redwood");
  private static final List<String> GRADES = List.of("Select-Structural", "No.1", "No.2", "No.3");

  private final Tables tables = Tables.load();

  @Test
  void every_species_grade_and_size_has_values_but_no_3_timbers() {
    for (String species : SPECIES) {
      for (String grade : GRADES) {
        for (SizeRow size : tables.sizes().rows()) {
          if (size.memberClass().timber() && grade.equals("No.3")) {
            assertThatThrownBy(() -> tables.designValues(species, grade, size))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("design-values.csv has no No.3 " + species)
                .hasMessageContaining("for " + size.id());
          } else {
            assertThat(tables.designValues(species, grade, size).bendingPsi()).isPositive();
          }
        }
      }
    }
  }

  @Test
  void no_two_rows_answer_for_the_same_timber() {
    Set<String> seen = new HashSet<>();
    for (DesignValueRow row : tables.designValues().rows()) {
      assertThat(seen.add(row.species() + row.grade() + row.memberClass() + row.nominalWidth()))
          .as(row.id())
          .isTrue();
    }
    assertThat(seen).hasSize(76);
  }

  @Test
  void a_better_grade_is_never_weaker() {
    List<ToDoubleFunction<DesignValueRow>> values =
        List.of(
            DesignValueRow::bendingPsi,
            DesignValueRow::tensionPsi,
            DesignValueRow::shearPsi,
            DesignValueRow::bearingPsi,
            DesignValueRow::compressionPsi,
            DesignValueRow::elasticityPsi,
            DesignValueRow::stabilityElasticityPsi);
    for (String species : SPECIES) {
      for (SizeRow size : tables.sizes().rows()) {
        int grades = size.memberClass().timber() ? 3 : 4;
        for (int i = 1; i < grades; i++) {
          DesignValueRow better = tables.designValues(species, GRADES.get(i - 1), size);
          DesignValueRow lesser = tables.designValues(species, GRADES.get(i), size);
          for (ToDoubleFunction<DesignValueRow> value : values) {
            assertThat(value.applyAsDouble(better))
                .as(better.id() + " over " + lesser.id())
                .isGreaterThanOrEqualTo(value.applyAsDouble(lesser));
          }
        }
      }
    }
  }

  /** NDS Supplement 2018, Tables 4A and 4D: open grain has G 0.37, Fc across 425 or 420 psi. */
  @Test
  void all_redwood_is_of_one_kind_the_weaker_open_grain() {
    List<DesignValueRow> redwood =
        tables.designValues().rows().stream()
            .filter(row -> row.species().equals("redwood"))
            .toList();
    assertThat(redwood).isNotEmpty();
    for (DesignValueRow row : redwood) {
      boolean timber = row.memberClass().timber();
      assertThat(row.bearingPsi()).as(row.id()).isEqualTo(timber ? 420 : 425);
      assertThat(row.specificGravityRatio()).as(row.id()).isEqualTo(0.37);
      // Close-grain No.1 has E 1.3 million psi in both tables; open grain nowhere above 1.1.
      assertThat(row.elasticityPsi()).as(row.id()).isLessThanOrEqualTo(1_100_000);
    }
    assertThat(tables.designValues("redwood", "No.2", tables.size("6x6")).bendingPsi())
        .isEqualTo(750);
  }

  @Test
  void stability_modulus_follows_the_modulus_within_rounding() {
    // NDS 2018, Appendix D: Emin = E (1 - 1.645 x 0.25) x 1.03 / 1.66, from memory
    for (DesignValueRow row : tables.designValues().rows()) {
      assertThat(row.stabilityElasticityPsi() / row.elasticityPsi())
          .as(row.id())
          .isCloseTo(0.365, within(0.006));
    }
  }

  @Test
  void wide_southern_pine_is_no_stronger_than_narrow() {
    for (String grade : GRADES) {
      double last = Double.POSITIVE_INFINITY;
      for (String size : List.of("2x4", "2x6", "2x8", "2x10", "2x12")) {
        double bending =
            tables.designValues("southern-pine", grade, tables.size(size)).bendingPsi();
        assertThat(bending).as(grade + " " + size).isLessThan(last);
        last = bending;
      }
    }
  }

  @Test
  void spruce_pine_fir_number_1_and_2_are_the_same_row_value() {
    SizeRow size = tables.size("2x8");
    DesignValueRow one = tables.designValues("spruce-pine-fir", "No.1", size);
    DesignValueRow two = tables.designValues("spruce-pine-fir", "No.2", size);
    assertThat(one.bendingPsi()).isEqualTo(two.bendingPsi()).isEqualTo(875);
    assertThat(one.compressionPsi()).isEqualTo(two.compressionPsi());
  }

  @Test
  void the_class_follows_the_nominal_size() {
    assertThat(MemberClass.of(4, 4)).isEqualTo(MemberClass.DIMENSION);
    assertThat(MemberClass.of(4, 12)).isEqualTo(MemberClass.DIMENSION);
    assertThat(MemberClass.of(5, 5)).isEqualTo(MemberClass.POST_TIMBER);
    assertThat(MemberClass.of(6, 8)).isEqualTo(MemberClass.POST_TIMBER);
    assertThat(MemberClass.of(6, 10)).isEqualTo(MemberClass.BEAM_TIMBER);
    for (SizeRow size : tables.sizes().rows()) {
      assertThat(size.memberClass())
          .as(size.id())
          .isEqualTo(MemberClass.of(size.nominalThicknessIn(), size.nominalWidthIn()));
    }
  }

  @Test
  void rank_follows_the_area_of_the_section_in_each_market() {
    for (String market : List.of("north-america", "metric")) {
      List<SizeRow> sizes =
          tables.sizes().rows().stream()
              .filter(size -> size.market().equals(market))
              .sorted(Comparator.comparing(SizeRow::rankCount))
              .toList();
      assertThat(sizes).hasSizeGreaterThan(10);
      assertThat(sizes.stream().map(SizeRow::rankCount).distinct()).hasSameSizeAs(sizes);
      assertThat(sizes)
          .isSortedAccordingTo(Comparator.comparing(size -> size.thicknessIn() * size.widthIn()));
    }
  }

  @Test
  void sizes_of_a_role_come_smallest_first() {
    assertThat(tables.sizes("post", "north-america").stream().map(SizeRow::id))
        .containsExactly("4x4", "6x6", "8x8");
    assertThat(tables.sizes("crossbeam", "north-america").stream().map(SizeRow::id))
        .containsExactly("2x4", "2x6", "2x8", "2x10", "2x12", "4x6", "4x8", "4x10");
    assertThat(tables.sizes("rail", "metric").stream().map(SizeRow::id))
        .containsExactly("45x95", "45x145", "95x95", "120x120");
    assertThat(tables.sizes("pew", "metric")).isEmpty();
  }

  @Test
  void every_size_is_sold_in_some_lengths() {
    for (SizeRow size : tables.sizes().rows()) {
      assertThat(tables.stockLengths(size).lengthsIn()).as(size.id()).hasSizeGreaterThan(3);
    }
    assertThat(tables.stockLengths(tables.size("4x4")).lengthsIn())
        .containsExactly(96.0, 120.0, 144.0, 168.0, 192.0);
  }

  @Test
  void every_lookup_of_a_factor_has_one_answer() {
    for (String species : SPECIES) {
      for (SizeRow size : tables.sizes().rows()) {
        List<String> hits = new ArrayList<>();
        String memberClass =
            species.equals("southern-pine") ? "southern-pine-dimension" : "dimension";
        for (AdjustmentRow row : tables.adjustmentFactors().rows()) {
          if (row.factor().equals("size")
              && row.property().equals("bending")
              && row.memberClass().equals(memberClass)
              && row.nominalThickness().holds(size.nominalThicknessIn())
              && row.nominalWidth().holds(size.nominalWidthIn())) {
            hits.add(row.id());
          }
        }
        assertThat(hits).as(size.id()).hasSize(size.memberClass().timber() ? 0 : 1);
        assertThat(tables.factors().size(species, size).bendingFactor()).isBetween(1.0, 1.5);
      }
    }
  }

  @Test
  void size_factors_do_not_grow_with_width() {
    double lastBending = 9;
    double lastCompression = 9;
    for (String id : List.of("2x4", "2x6", "2x8", "2x10", "2x12")) {
      Factors.Size factors = tables.factors().size("hem-fir", tables.size(id));
      assertThat(factors.bendingFactor()).as(id).isLessThan(lastBending);
      assertThat(factors.tensionFactor()).as(id).isEqualTo(factors.bendingFactor());
      assertThat(factors.compressionFactor()).as(id).isLessThanOrEqualTo(lastCompression);
      lastBending = factors.bendingFactor();
      lastCompression = factors.compressionFactor();
    }
  }

  @Test
  void southern_pine_takes_a_size_factor_only_in_4_in_stock_8_in_and_wider() {
    Factors factors = tables.factors();
    assertThat(factors.size("southern-pine", tables.size("2x8")).bendingFactor()).isEqualTo(1);
    assertThat(factors.size("southern-pine", tables.size("4x6")).bendingFactor()).isEqualTo(1);
    assertThat(factors.size("southern-pine", tables.size("4x8")).bendingFactor()).isEqualTo(1.1);
    assertThat(factors.size("southern-pine", tables.size("4x10")).tensionFactor()).isEqualTo(1);
  }

  @Test
  void wet_service_weakens_and_has_its_thresholds() {
    Factors.WetService dimension = tables.factors().wetService("hem-fir", MemberClass.DIMENSION);
    assertThat(dimension.bendingFactor()).isEqualTo(0.85);
    assertThat(dimension.bendingUnityUpToPsi()).isEqualTo(1150);
    assertThat(dimension.compressionUnityUpToPsi()).isEqualTo(750);
    Factors.WetService timber = tables.factors().wetService("hem-fir", MemberClass.POST_TIMBER);
    assertThat(timber.compressionFactor()).isEqualTo(0.91);
    assertThat(timber.compressionUnityUpToPsi()).isZero();
    Factors.WetService pine = tables.factors().wetService("southern-pine", MemberClass.BEAM_TIMBER);
    assertThat(pine.bearingFactor()).isEqualTo(1);
  }

  @Test
  void a_shorter_load_allows_more() {
    double last = 0;
    for (String load : List.of("dead", "snow", "roof-live", "wind", "impact")) {
      AdjustmentRow row = tables.factors().loadDuration(load);
      assertThat(row.amount()).as(load).isGreaterThan(last);
      last = row.amount();
    }
  }

  @Test
  void incising_is_for_dimension_lumber_only() {
    assertThat(tables.factors().incising(MemberClass.DIMENSION).strengthFactor()).isEqualTo(0.8);
    assertThat(tables.factors().incising(MemberClass.POST_TIMBER).strengthFactor()).isEqualTo(1);
  }

  @Test
  void a_bolt_may_not_sit_closer_than_its_least_nor_gain_beyond_full() {
    int pairs = 0;
    for (AdjustmentRow row : tables.adjustmentFactors().rows()) {
      if (row.id().startsWith("bolt-geometry.") && row.id().endsWith(".full")) {
        AdjustmentRow least = tables.factor(row.id().replace(".full", ".least"));
        assertThat(least.amount()).as(row.id()).isLessThanOrEqualTo(row.amount());
        pairs++;
      }
    }
    assertThat(pairs).isEqualTo(8);
  }

  @Test
  void a_fastener_is_thinnest_at_its_root() {
    for (FastenerRow row : tables.fasteners().rows()) {
      assertThat(row.rootDiameterIn()).as(row.id()).isLessThanOrEqualTo(row.diameterIn());
    }
  }

  @Test
  void wet_weights_follow_the_formula_of_nds_supplement_3_1_3() {
    // 62.4 G / (1 + 0.009 G mc) (1 + mc/100) at 30 percent moisture, from memory; at 15 percent it
    // gives the printed column of AWC Wood Structural Design Data, 1992 revisions
    for (DesignValueRow row : Tables.load().designValues().rows()) {
      double g = row.specificGravityRatio();
      assertThat(row.wetWeightPcf())
          .as(row.id())
          .isCloseTo(62.4 * g / (1 + 0.009 * g * 30) * 1.30, within(0.06));
    }
  }
}
