package org.scantling.visit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was answered so far.
 *
 * @param given the answers by question
 * @param earlier answers that were gone back over, to be offered again
 */
public record VisitAnswers(Map<String, Given> given, Map<String, String> earlier) {
  /** Where an answer came from. */
  public enum From {
    /** Somebody gave it. */
    TOLD,
    /** An empty line took what follows from other answers, or what stands in the file anyway. */
    WORKED,
    /** An empty line took the usual one, which the file leaves out. */
    USUAL
  }

  /**
   * One answer.
   *
   * @param text the answer as it is kept: a word, not its number in a list
   */
  public record Given(String text, From from) {
    /** Whether somebody gave it. */
    public boolean told() {
      return from == From.TOLD;
    }

    /** Whether the file says it. */
    public boolean isWritten() {
      return from != From.USUAL;
    }
  }

  public VisitAnswers {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
    earlier = Collections.unmodifiableMap(new LinkedHashMap<>(earlier));
  }

  public static VisitAnswers none() {
    return new VisitAnswers(Map.of(), Map.of());
  }

  public Optional<Given> of(String question) {
    return Optional.ofNullable(given.get(question));
  }

  VisitAnswers with(String question, Given answer) {
    Map<String, Given> all = new LinkedHashMap<>(given);
    all.put(question, answer);
    Map<String, String> old = new LinkedHashMap<>(earlier);
    old.remove(question);
    return new VisitAnswers(all, old);
  }

  /** Without the answer to a question, which is remembered. */
  VisitAnswers without(String question) {
    Map<String, Given> all = new LinkedHashMap<>(given);
    Given gone = all.remove(question);
    Map<String, String> old = new LinkedHashMap<>(earlier);
    if (gone != null && gone.told()) {
      old.put(question, gone.text());
    }
    return new VisitAnswers(all, old);
  }
}
