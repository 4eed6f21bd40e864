package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.intake.KeyReader;

/** What a structure is told to have been through, as items of its record. */
final class RecordItems {
  static final String KEY = "proven.record";
  static final String DATE = KEY + ".date";

  private RecordItems() {}

  /** The questions that one kind of item is put together from. */
  private record Asked(String kind, String what, String date, String photo) {}

  private static final List<Asked> ALL =
      List.of(
          new Asked("storm", "storm", "storm-date", ""),
          new Asked("snow", "snow", "snow-date", ""),
          new Asked("repair", "mended", "mended-date", ""),
          new Asked("inspection", "seen", "base-date", "photo"));

  /**
   * @param answers what was answered to a question, where it was asked and not left out
   */
  static List<String> of(KeyReader keys, Function<String, Optional<String>> answers) {
    List<String> items = new ArrayList<>();
    for (Asked each : ALL) {
      Optional<String> what = answers.apply(each.what());
      Optional<String> date = answers.apply(each.date());
      if (what.isPresent() && date.isPresent()) {
        items.add(
            item(keys, date.get(), each.kind(), what.get(), answers.apply(each.photo())));
      }
    }
    return items;
  }

  /** One item as it stands in a file. */
  static String item(
      KeyReader keys, String date, String kind, String what, Optional<String> photo) {
    return "{ date: "
        + date
        + ", kind: "
        + kind
        + ", what: "
        + quoted(keys.written(KEY + ".what", what))
        + photo
            .map(name -> ", photo: " + quoted(keys.written(KEY + ".photo", name)))
            .orElse("")
        + " }";
  }

  /** Between braces a comma ends a value. */
  private static String quoted(String written) {
    return written.startsWith("\"") ? written : "\"" + written + "\"";
  }
}
