package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.intake.KeyReader;

/** What a structure is told to have been through, as items of its record. */
public final class RecordItems {
  static final String KEY = "proven.record";
  static final String DATE = KEY + ".date";
  static final String KIND = KEY + ".kind";
  static final String WHAT = KEY + ".what";
  static final String PHOTO = KEY + ".photo";

  private RecordItems() {}

  /** The questions that one kind of item is put together from. */
  private record Asked(String kind, String what, String date, String photo) {}

  private static final List<Asked> ALL =
      List.of(
          new Asked("storm", "storm", "storm-date", ""),
          new Asked("snow", "snow", "snow-date", ""),
          new Asked("repair", "mended", "mended-date", ""),
          new Asked("inspection", "seen", "base-date", "photo"));

  /** What the visit to a record asks; its kind is an answer too. */
  private static final Asked EVENT =
      new Asked("event-kind", "event-what", "event-date", "event-photo");

  /**
   * @param answers what was answered to a question, where it was asked and not left out
   */
  static List<String> of(KeyReader keys, Function<String, Optional<String>> answers) {
    List<String> items = new ArrayList<>();
    for (Asked each : ALL) {
      item(keys, each, Optional.of(each.kind()), answers).ifPresent(items::add);
    }
    item(keys, EVENT, answers.apply(EVENT.kind()), answers).ifPresent(items::add);
    return items;
  }

  private static Optional<String> item(
      KeyReader keys,
      Asked asked,
      Optional<String> kind,
      Function<String, Optional<String>> answers) {
    Optional<String> what = answers.apply(asked.what());
    Optional<String> date = answers.apply(asked.date());
    return kind.isPresent() && what.isPresent() && date.isPresent()
        ? Optional.of(item(keys, date.get(), kind.get(), what.get(), answers.apply(asked.photo())))
        : Optional.empty();
  }

  /** One item as it stands in a file. */
  public static String item(
      KeyReader keys, String date, String kind, String what, Optional<String> photo) {
    return "{ date: "
        + date
        + ", kind: "
        + kind
        + ", what: "
        + quoted(keys.written(WHAT, what))
        + photo.map(name -> ", photo: " + quoted(keys.written(PHOTO, name))).orElse("")
        + " }";
  }

  /** Between braces a comma ends a value. */
  private static String quoted(String written) {
    return written.startsWith("\"") ? written : "\"" + written + "\"";
  }
}
