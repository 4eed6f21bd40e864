package org.scantling.print;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Change;
import org.scantling.reasons.Demand;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;

/** How far what the base has would have served, and what would bring it back. */
final class BringBack {
  private static final int MOST = 3;

  private final LeastChange least;
  private final WayWords words;

  BringBack(Told told, LeastChange least) {
    this.least = least;
    this.words = new WayWords(told, least.wanted());
  }

  void write(Page page) {
    page.heading(words.phrase(phrase("back.title")));
    List<Change> less =
        least.singles().stream().map(way -> way.changes().get(0)).filter(BringBack::less).toList();
    if (!less.isEmpty()) {
      page.paragraph(words.phrase("back.served", Map.of("values", words.values(less))));
    }
    List<Way> chosen = chosen();
    page.paragraph(
        words.phrase(phrase(chosen.isEmpty() ? "back.none" : "back.lead." + chosen.size())));
    page.items(words.items(chosen));
  }

  /** A number is not brought back, it is kept at. */
  private String phrase(String id) {
    return least.wanted().bound() == Wanted.Bound.JUST_THIS ? id : id + ".number";
  }

  /** One of each demand: the nearer way of two. */
  private List<Way> chosen() {
    Set<Demand> told = EnumSet.noneOf(Demand.class);
    return least.singles().stream()
        .filter(Way::choice)
        .filter(way -> told.add(way.changes().get(0).demand()))
        .limit(MOST)
        .toList();
  }

  /** Less of a number. */
  private static boolean less(Change change) {
    return Stream.of(change)
        .filter(each -> each.to() instanceof Outcome.Amount)
        .anyMatch(each -> amount(each.to()) < amount(each.from()));
  }

  private static double amount(Outcome outcome) {
    Measure measure = ((Outcome.Amount) outcome).measure();
    return measure.amount();
  }
}
