package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.sayings.Sayings;
import org.scantling.words.ClosedList;
import org.scantling.words.ListValue;

/** The words that a site file accepts, and how to tell which is right. */
final class ChoicesPage {
  private static final Sayings SAYINGS = Sayings.of("word-lists");

  private ChoicesPage() {}

  /** Which lists there are, and what asks for one. */
  static Page of(List<ClosedList> lists) {
    List<List<String>> grid = new ArrayList<>();
    grid.add(
        List.of(SAYINGS.say("column.list"), SAYINGS.say("column.key"), SAYINGS.say("column.says")));
    for (ClosedList list : lists) {
      grid.add(List.of(list.name(), list.key(), list.says()));
    }
    return new Page()
        .title(SAYINGS.say("title"))
        .add(new Block.Grid(grid))
        .paragraph(SAYINGS.say("ask"));
  }

  /** One list, each word with what it is and how to tell it. */
  static Page of(ClosedList list) {
    Page page = new Page().title(Sentence.capital(list.says())).paragraph(list.how());
    page.items(
        list.values().stream().map(each -> new Block.Item(each.value(), told(each))).toList());
    page.paragraph(SAYINGS.say("keys", "keys", Sentence.list(list.keys())));
    List<String> sources = sources(list);
    return sources.isEmpty()
        ? page
        : page.paragraph(SAYINGS.say("sources", "sources", String.join("; ", sources)));
  }

  private static String told(ListValue value) {
    return value.name() + "." + (value.how().isEmpty() ? "" : " " + value.how());
  }

  /** The documents behind it, each once; what is habit alone needs none. */
  private static List<String> sources(ClosedList list) {
    return list.values().stream()
        .map(ListValue::source)
        .filter(source -> source.kind() != SourceKind.COMMON_PRACTICE)
        .map(Source::text)
        .distinct()
        .toList();
  }
}
