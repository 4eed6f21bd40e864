package org.scantling.visit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.KeyReader;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.words.ClosedList;
import org.scantling.words.ClosedLists;
import org.scantling.words.ListValue;

/** The words that answer each question, and how to tell them apart. */
public final class VisitChoices {
  private final KeyReader keys;
  private final ClosedLists lists;
  private final Map<String, List<Choosable>> own = new LinkedHashMap<>();

  /**
   * @param lists how to tell the words of the keys apart
   * @param offered what else answers a question, by its id
   */
  public VisitChoices(KeyReader keys, ClosedLists lists, Map<String, List<Choosable>> offered) {
    this.keys = keys;
    this.lists = lists;
    own.putAll(offered);
    for (WordRow row : WordFile.read("words/visit-choices.csv")) {
      own.computeIfAbsent(row.cell("question"), id -> new ArrayList<>())
          .add(new Choosable(row.cell("option"), row.cell("words")));
    }
  }

  /** True where a question is answered by one of a list of words. */
  boolean answer(VisitRow row) {
    return row.asks() == AskedAs.WORDS
        || row.asks() == AskedAs.SEVERAL
        || row.asks() == AskedAs.BASE;
  }

  /** Those of the key, then the question's own. */
  ChoiceList of(VisitRow row) {
    List<Choosable> all = new ArrayList<>();
    if (row.hasPath()) {
      Optional<ClosedList> list = lists.at(row.path());
      List<String> told = list.map(ClosedList::words).orElse(List.of());
      keys.words(row.path()).stream()
          .sorted(Comparator.comparingInt(word -> place(told, word)))
          .map(
              word ->
                  new Choosable(
                      word,
                      list.flatMap(each -> each.find(word)).map(VisitChoices::says).orElse("")))
          .forEach(all::add);
    }
    all.addAll(own.getOrDefault(row.id(), List.of()));
    return new ChoiceList(all);
  }

  /** Bare words. */
  List<Choosable> sizes(Collection<String> words) {
    return words.stream().map(word -> new Choosable(word, "")).toList();
  }

  /** How to find out which word is right. */
  Optional<String> how(VisitRow row) {
    return row.hasPath() ? lists.at(row.path()).map(ClosedList::how) : Optional.empty();
  }

  private static int place(List<String> told, String word) {
    int place = told.indexOf(word);
    return place < 0 ? told.size() : place;
  }

  private static String says(ListValue value) {
    boolean plain = same(value.name(), value.value());
    return plain ? value.how() : (value.name() + ". " + value.how()).strip();
  }

  private static boolean same(String name, String word) {
    return letters(name).equals(letters(word));
  }

  private static String letters(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }
}
