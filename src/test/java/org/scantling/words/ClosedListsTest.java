package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.Tables;

class ClosedListsTest {
  private static final Tables TABLES = Tables.load();
  private static final ClosedLists LISTS = ClosedLists.of(TABLES, UnitSystem.IMPERIAL);

  @Test
  void soils_are_told_by_hand_and_by_the_jar_with_its_hours() {
    ClosedList soils = LISTS.find("soil").orElseThrow();

    assertThat(soils.key()).isEqualTo("site.soil");
    assertThat(soils.words())
        .containsExactly("sandy-gravel", "sand", "clay", "foliated-rock", "bedrock");
    // Stokes' law for 6 in of water: a grain of 0.075 mm falls it in 30 s, one of 0.005 mm in 2 h.
    assertThat(soils.how()).contains("1 minute is sand", "2 hours silt", "a day or two clay");
    assertThat(soils.find("clay").orElseThrow().how()).contains("ribbon", "thread", "In the jar");
    assertThat(soils.find("clay").orElseThrow().source().text())
        .contains("ASTM D2488")
        .endsWith("from memory");
  }

  @Test
  void exposure_is_told_by_what_stands_how_far_upwind() {
    ClosedList exposures = LISTS.at("site.climate.exposure").orElseThrow();

    assertThat(exposures.find("B").orElseThrow().how()).contains("1500 ft");
    assertThat(exposures.find("D").orElseThrow().how()).contains("600 ft", "a mile");
  }

  @Test
  void a_timber_is_told_by_what_it_measures() {
    ClosedList sizes = LISTS.at("posts.size").orElseThrow();

    assertThat(sizes.find("4x4").orElseThrow().name())
        .isEqualTo("3 1/2\" by 3 1/2\" across the end");
    assertThat(ClosedLists.of(TABLES, UnitSystem.METRIC).at("posts.size").orElseThrow().find("4x4"))
        .hasValueSatisfying(size -> assertThat(size.name()).startsWith("89 mm by 89 mm"));
  }

  @Test
  void every_word_has_a_name_a_way_to_tell_it_and_a_source() {
    SoftAssertions all = new SoftAssertions();
    for (ClosedList list : LISTS.all()) {
      all.assertThat(list.how()).as(list.name()).endsWith(".");
      for (ListValue value : list.values()) {
        String at = list.name() + " " + value.value();
        all.assertThat(value.name()).as(at).isNotBlank().doesNotContain("{");
        if (!list.name().equals("size")) {
          all.assertThat(value.how()).as(at).endsWith(".").doesNotContain("{");
        }
        all.assertThat(value.source().text()).as(at).isNotBlank();
      }
    }
    all.assertAll();
  }

  @Test
  void no_row_is_for_a_word_that_its_list_does_not_have() {
    Set<String> told = new HashSet<>();
    for (WordRow row : WordFile.read("words/closed-list-values.csv")) {
      ClosedList list = LISTS.find(row.cell("list")).orElseThrow();
      String word = row.cell("value");
      assertThat(told.add(list.name() + " " + word)).as(word + " twice").isTrue();
      assertThat(word.equals("*") || list.find(word).isPresent()).as(word).isTrue();
    }
  }

  @Test
  void what_another_file_of_words_says_is_not_said_again() {
    List<String> again =
        WordFile.read("words/closed-list-values.csv").stream()
            .filter(row -> !row.cell("name").isEmpty())
            .filter(row -> otherwiseNamed(row.cell("list"), row.cell("value")))
            .map(row -> row.cell("list") + " " + row.cell("value"))
            .toList();

    assertThat(again).isEmpty();
  }

  private static boolean otherwiseNamed(String list, String word) {
    String kind =
        WordFile.read("words/closed-lists.csv").stream()
            .filter(row -> row.cell("list").equals(list))
            .map(row -> row.cell("names"))
            .findFirst()
            .orElseThrow();
    return OptionWords.read(TABLES).find(kind, word, Reader.BUILDER).isPresent();
  }

  @Test
  void a_list_is_found_by_its_name_its_key_and_the_last_part_of_it() {
    assertThat(LISTS.find("Soils").orElseThrow().name()).isEqualTo("soil");
    assertThat(LISTS.find("walkway.users").orElseThrow().name()).isEqualTo("user");
    assertThat(LISTS.find("users").orElseThrow().name()).isEqualTo("user");
    assertThat(LISTS.at("planting[2].vine").orElseThrow().name()).isEqualTo("vine");
    assertThat(LISTS.find("lawn")).isEmpty();
  }
}
