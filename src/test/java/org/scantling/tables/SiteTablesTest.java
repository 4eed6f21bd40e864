package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.Unit;

/** Climate, ground, climbers and users: every key, and order by physics. */
class SiteTablesTest {
  private final Tables tables = Tables.load();

  @Test
  void the_thirteen_zones_grow_milder_and_never_go_under_12_inches() {
    double last = Double.POSITIVE_INFINITY;
    double lastSnow = Double.POSITIVE_INFINITY;
    for (int zone = 1; zone <= 13; zone++) {
      ZoneRow row = tables.zone(zone);
      assertThat(row.frostDepthIn()).isBetween(12.0, last);
      assertThat(row.groundSnowPsf()).isLessThanOrEqualTo(lastSnow);
      last = row.frostDepthIn();
      lastSnow = row.groundSnowPsf();
    }
    assertThat(tables.zones().rows()).hasSize(13);
    assertThat(tables.zone(5).frostDepthIn()).isEqualTo(48);
    assertThat(tables.zone(5).note()).contains("no published source ties zone to frost depth");
    assertThatThrownBy(() -> tables.zone(14))
        .hasMessage("zones.csv has no row '14', it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13");
  }

  @Test
  void no_zone_estimate_lies_beyond_the_limits_of_the_rules() {
    for (ZoneRow row : tables.zones().rows()) {
      assertThat(row.groundSnowPsf())
          .isLessThanOrEqualTo(tables.thumb("limit.ground-snow").amount());
      assertThat(row.windMph()).isLessThanOrEqualTo(tables.thumb("limit.wind-speed").amount());
    }
  }

  @Test
  void firmer_ground_bears_more_both_ways() {
    double vertical = Double.POSITIVE_INFINITY;
    double lateral = Double.POSITIVE_INFINITY;
    for (String key : List.of("bedrock", "foliated-rock", "sandy-gravel", "sand", "clay")) {
      SoilRow soil = tables.soil(key);
      assertThat(soil.verticalBearingPsf()).isLessThan(vertical);
      assertThat(soil.lateralBearingPsfPerFt()).isLessThan(lateral);
      vertical = soil.verticalBearingPsf();
      lateral = soil.lateralBearingPsfPerFt();
      assertThat(soil.frictionRatio().isPresent()).isNotEqualTo(soil.cohesionPsf().isPresent());
      assertThat(soil.thermal().isPresent()).isEqualTo(!key.endsWith("rock"));
    }
    assertThat(tables.soils().rows()).hasSize(5);
  }

  @Test
  void every_vine_has_its_row_and_none_weighs_nothing() {
    for (String key :
        List.of(
            "clematis",
            "climbing-rose",
            "honeysuckle",
            "jasmine",
            "grape",
            "hops",
            "wisteria",
            "kiwi",
            "trumpet-creeper")) {
      VineRow vine = tables.vine(key);
      assertThat(vine.wetDesignPsf()).as(key).isBetween(vine.wetLowPsf(), vine.wetHighPsf());
      assertThat(vine.wetDesignPsf()).as(key).isPositive();
      assertThat(vine.hangingIn()).as(key).isPositive();
    }
    VineRow none = tables.vine("none");
    assertThat(none.wetDesignPsf()).isZero();
    assertThat(none.sideFillLeafRatio()).isZero();
    assertThat(none.hangingIn()).isZero();
    assertThat(tables.vine("hops").woody()).isFalse();
  }

  @Test
  void a_heavier_class_is_designed_for_more() {
    double last = -1;
    for (String key : List.of("none", "clematis", "climbing-rose", "grape", "wisteria")) {
      assertThat(tables.vine(key).wetDesignPsf()).isGreaterThan(last);
      last = tables.vine(key).wetDesignPsf();
    }
  }

  @Test
  void users_need_width_and_never_less_than_the_least_headroom() {
    assertThat(tables.user("wheelchair").clearWidthIn()).isEqualTo(36);
    assertThat(tables.user("wheelchairs-passing").clearWidthIn()).isEqualTo(60);
    for (UserRow user : tables.users().rows()) {
      assertThat(user.headroomIn()).isGreaterThanOrEqualTo(tables.thumb("headroom.least").amount());
      // One person, shoulder to shoulder with a hand's breadth each side.
      assertThat(user.clearWidthIn()).isGreaterThanOrEqualTo(30);
    }
  }

  @Test
  void the_wind_profile_stands_for_b_c_and_d() {
    assertThat(tables.exposures().rows())
        .extracting(ExposureRow::id)
        .containsExactly("B", "C", "D");
    assertThat(tables.exposure("D").snowSource().text())
        .isEqualTo(
            "ASCE/SEI 7-16, Minimum Design Loads, Table 7.3-1, partially exposed, from memory");
  }

  @Test
  void the_lattice_bands_leave_no_gap_and_denser_is_less() {
    WindRow sparse = tables.wind("wind.lattice.flat.sparse");
    WindRow middle = tables.wind("wind.lattice.flat.middle");
    WindRow dense = tables.wind("wind.lattice.flat.dense");
    assertThat(sparse.fromRatio()).isZero();
    assertThat(middle.fromRatio()).isEqualTo(sparse.toRatio());
    assertThat(dense.fromRatio()).isEqualTo(middle.toRatio());
    assertThat(dense.toRatio()).isEqualTo(tables.wind("wind.lattice.solid-from").amount());
    assertThat(sparse.amount()).isGreaterThan(middle.amount());
    assertThat(middle.amount()).isGreaterThan(dense.amount());
  }

  @Test
  void a_lattice_takes_the_factor_of_its_band_and_a_denser_side_is_a_wall() {
    assertThat(tables.windLattice(0).amount()).isEqualTo(2.0);
    assertThat(tables.windLattice(0.0999).amount()).isEqualTo(2.0);
    assertThat(tables.windLattice(0.1).amount()).isEqualTo(1.8);
    assertThat(tables.windLattice(0.3).amount()).isEqualTo(1.6);
    assertThat(tables.windLattice(0.7).amount()).isEqualTo(1.6);
    assertThatThrownBy(() -> tables.windLattice(0.71))
        .hasMessage("solid share 0.71 must be from 0 to 0.7; above it is a wall");
    assertThatThrownBy(() -> tables.windLattice(-0.1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_wall_takes_the_greater_factor_of_the_two_rows_beside_it() {
    assertThat(tables.windWall(0.01).amount()).isEqualTo(1.80);
    assertThat(tables.windWall(0.9).amount()).isEqualTo(1.55);
    assertThat(tables.windWall(1).amount()).isEqualTo(1.45);
    assertThat(tables.windWall(500).amount()).isEqualTo(1.30);
    assertThatThrownBy(() -> tables.windWall(0))
        .hasMessage("length over height 0.0 must be above zero");
  }

  @Test
  void a_place_number_wins_over_its_county_and_the_county_over_the_others() {
    assertThat(tables.freezingIndex("Colorado", "Gunnison").orElseThrow().id())
        .isEqualTo("local.gunnison-co");
    assertThat(tables.freezingIndex("Colorado", "Lake").orElseThrow().freezingIndexFDays())
        .isEqualTo(3500);
    assertThat(tables.freezingIndex("Colorado", "Denver").orElseThrow().bound())
        .isEqualTo("at-most");
    assertThat(tables.freezingIndex("Alabama", "Lee").orElseThrow().freezingIndexFDays())
        .isEqualTo(1500);
    assertThat(tables.freezingIndex("Atlantis", "Lake")).isEmpty();
  }

  @Test
  void every_check_asks_for_at_most_its_capacity_and_has_words_for_both_readers() {
    for (CheckRow check : tables.checks().rows()) {
      assertThat(check.limitRatio()).as(check.id()).isLessThanOrEqualTo(1);
      assertThat(check.clientWords()).as(check.id()).isNotEqualTo(check.builderWords());
      assertThat(check.clientWords()).as(check.id()).doesNotContain("psi", "NDS", "C_");
    }
    assertThat(tables.check("post.drift").unit()).isEqualTo(Unit.INCH);
  }

  @Test
  void bounds_from_both_sides_leave_room_between_them() {
    for (String[] pair :
        new String[][] {
          {"bay.least", "bay.longest"},
          {"crossbeam.spacing-least", "crossbeam.spacing-longest"},
          {"notch.interior-depth-share", "notch.end-depth-share"}
        }) {
      assertThat(tables.thumb(pair[0]).amount())
          .as(pair[0])
          .isLessThan(tables.thumb(pair[1]).amount());
      assertThat(tables.thumb(pair[0]).measure().unit())
          .isEqualTo(tables.thumb(pair[1]).measure().unit());
    }
  }

  @Test
  void a_mistyped_id_is_answered_with_its_family() {
    assertThatThrownBy(() -> tables.thumb("bay.lengest"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(
            "thumb.csv has no row 'bay.lengest', it has bay.stretch, bay.least");
  }
}
