package org.scantling.print;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.design.BaseDesign;
import org.scantling.sayings.Sayings;

/** What a base is told to have been through, in a few sentences of rules/words/record.csv. */
final class RecordWords {
  private static final int YEAR = 4;
  private static final int YEAR_AND_MONTH = 7;

  private final Sayings sayings = Sayings.of("record");
  private final List<BaseDesign.Event> events;

  private RecordWords(List<BaseDesign.Event> events) {
    this.events = events.stream().sorted(Comparator.comparing(BaseDesign.Event::date)).toList();
  }

  /** Nothing where nothing is told. */
  static Optional<String> sentences(List<BaseDesign.Event> events) {
    return events.isEmpty() ? Optional.empty() : Optional.of(new RecordWords(events).text());
  }

  private String text() {
    List<String> through =
        events.stream()
            .filter(each -> each.kind().equals("storm") || each.kind().equals("snow"))
            .map(this::said)
            .toList();
    Stream<String> come =
        through.isEmpty()
            ? Stream.empty()
            : Stream.of(sayings.say("through", "events", Sentence.phrases(through)));
    Stream<String> seen = of("inspection").reduce((one, later) -> later).stream().map(this::said);
    Stream<String> mended = of("repair").map(this::said);
    return String.join(" ", Stream.of(come, mended, seen).flatMap(each -> each).toList());
  }

  private Stream<BaseDesign.Event> of(String kind) {
    return events.stream().filter(each -> each.kind().equals(kind));
  }

  private String said(BaseDesign.Event event) {
    String what = event.what().replaceAll("\\.$", "");
    return sayings.say(event.kind(), "date", date(event.date()), "what", what);
  }

  private String date(String written) {
    return switch (written.length()) {
      case YEAR -> written;
      case YEAR_AND_MONTH -> YearMonth.parse(written).format(like("date.month"));
      default -> LocalDate.parse(written).format(like("date.day"));
    };
  }

  private DateTimeFormatter like(String saying) {
    return DateTimeFormatter.ofPattern(sayings.say(saying), Locale.ENGLISH);
  }
}
