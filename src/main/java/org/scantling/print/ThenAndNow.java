package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.sayings.Sayings;

/** What changed, side by side, and what stayed. */
final class ThenAndNow {
  private static final Sayings SAYINGS = Sayings.of("comparison");

  private final List<Compared> lines;

  ThenAndNow(List<Compared> lines) {
    this.lines = lines;
  }

  void write(Page page) {
    List<List<String>> rows = new ArrayList<>();
    for (Compared line : lines) {
      if (line.novel()) {
        rows.add(List.of(Sentence.capital(line.name()), line.before(), line.here()));
      }
    }
    if (!rows.isEmpty()) {
      rows.add(0, List.of("", SAYINGS.say("column.base"), SAYINGS.say("column.here")));
      page.heading(SAYINGS.say("then-and-now")).add(new Block.Grid(rows));
    }
    List<String> stayed =
        lines.stream()
            .filter(line -> !line.novel() && line.proven() && !line.now().isEmpty())
            .map(line -> Compared.said(line.name(), line.now()))
            .toList();
    if (!stayed.isEmpty()) {
      page.paragraph(SAYINGS.say("stayed", "list", String.join("; ", stayed)));
    }
  }
}
