package org.scantling.facts;

import static org.scantling.reasons.Question.WIND_PRESSURE;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;
import org.scantling.tables.DefaultWord;
import org.scantling.tables.Tables;

/** Whether the name of a place says that it stands high. */
final class HillName {
  private HillName() {}

  /** The first such word of the title; empty where there is none. */
  static Optional<Worked> of(String title, Tables tables) {
    DefaultWord row = tables.defaults().row("hill.words");
    List<String> words = List.of(row.word().split(" "));
    return Arrays.stream(title.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(words::contains)
        .findFirst()
        .map(
            word ->
                new Worked(
                    "hill.named", WIND_PRESSURE, 1, Evidence.saw("word", word), row.source()));
  }
}
