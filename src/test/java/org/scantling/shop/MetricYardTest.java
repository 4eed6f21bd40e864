package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A yard that thinks in millimetres sells boxes of kilograms and coils of metres. */
class MetricYardTest {
  private static Buying buying(String scenario) {
    Built built = Jobs.scenario(scenario);
    return new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying();
  }

  private static List<String> packs(Buying buying) {
    return buying.lines().stream().map(BuyingLine::unit).toList();
  }

  @Test
  void packs_are_metric_where_the_timber_is() {
    assertThat(packs(buying("metric-country")))
        .contains("2.5 kg box", "25 m coil")
        .noneMatch(pack -> pack.contains(" lb") || pack.contains(" ft"));
    assertThat(packs(buying("mower-lane"))).contains("5 lb box", "100 ft coil");
  }

  @Test
  void concrete_comes_in_bags_of_kilograms() {
    Built built = Jobs.wish("metric-country", "preferences.footing=concrete");
    assertThat(
            new Purchase(built, Pieces.of(built), new Planting(built).climbers()).buying().lines())
        .anyMatch(line -> line.unit().equals("25 kg bag"))
        .noneMatch(line -> line.unit().contains("lb"));
  }

  @Test
  void every_inch_size_is_told_with_its_millimetres() {
    assertThat(buying("metric-country").lines())
        .filteredOn(line -> line.section().equals("fixings"))
        .isNotEmpty()
        .allMatch(line -> line.item().matches(".*\\([0-9.]+( x [0-9.]+)? mm\\).*"));
    assertThat(buying("mower-lane").lines()).noneMatch(line -> line.item().contains(" mm)"));
  }

  @Test
  void use_categories_come_from_the_table() {
    Buying buying = buying("mower-lane");
    assertThat(buying.aboveGround()).isEqualTo("UC3B");
    assertThat(buying.lines()).anyMatch(line -> line.use().contains("(UC4B)"));
  }
}
