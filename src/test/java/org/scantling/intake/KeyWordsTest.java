package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.sayings.WordFile;

class KeyWordsTest {
  @Test
  void every_key_of_every_file_has_words_and_no_words_are_spare() {
    List<String> keys = new ArrayList<>();
    for (Class<?> shape : List.of(SiteFile.class, DesignFile.class, DefaultsFile.class)) {
      collect(KeyWords.file(shape) + " ", shape, keys);
    }

    assertThat(WordFile.read("words/file-keys.csv"))
        .extracting(row -> row.cell("file") + " " + row.cell("key"))
        .containsExactlyInAnyOrderElementsOf(keys);
  }

  @Test
  void places_in_lists_do_not_matter() {
    assertThat(KeyWords.of(SiteFile.class, "planting[3].vine")).isEqualTo("class of climber");
  }

  @Test
  void a_key_without_words_is_a_fault() {
    assertThatThrownBy(() -> KeyWords.of(DesignFile.class, "planting"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("rules/words/file-keys.csv has no row for design planting");
  }

  private static void collect(String above, Class<?> shape, List<String> keys) {
    for (ShapeKeys.Key key : ShapeKeys.keys(shape)) {
      keys.add(above + key.key());
      if (key.isGroup()) {
        collect(above + key.key() + ".", key.type(), keys);
      }
    }
  }
}
