package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Tables;
import org.scantling.words.ClosedList;
import org.scantling.words.ClosedLists;

/** The lists that are told to people have the words that the files accept, no more and no fewer. */
class ListedWordsTest {
  private static final Tables TABLES = Tables.load();
  private static final Vocabulary VOCABULARY = Vocabulary.of(TABLES);
  private static final ClosedLists LISTS = ClosedLists.of(TABLES, UnitSystem.IMPERIAL);

  @ParameterizedTest
  @ValueSource(classes = {SiteFile.class, DesignFile.class})
  void every_word_that_a_file_accepts_is_told_and_nothing_else(Class<?> shape) {
    SoftAssertions all = new SoftAssertions();
    Map<String, Collection<String>> accepted = ListedKeys.of(shape, VOCABULARY);
    accepted.forEach(
        (path, words) ->
            all.assertThat(LISTS.at(path).map(ClosedList::words).orElse(List.of()))
                .as(path)
                .containsExactlyInAnyOrderElementsOf(new TreeSet<>(words)));
    assertThat(accepted).isNotEmpty();
    all.assertAll();
  }

  @Test
  void every_key_of_a_list_is_one_of_the_two_files() {
    Map<String, Collection<String>> accepted =
        new TreeMap<>(ListedKeys.of(SiteFile.class, VOCABULARY));
    accepted.putAll(ListedKeys.of(DesignFile.class, VOCABULARY));

    assertThat(LISTS.all().stream().flatMap(list -> list.keys().stream()))
        .doesNotHaveDuplicates()
        .allMatch(accepted::containsKey);
  }
}
