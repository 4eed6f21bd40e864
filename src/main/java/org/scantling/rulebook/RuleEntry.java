package org.scantling.rulebook;

import java.util.List;
import java.util.Map;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.words.Reader;

/**
 * One rule, told.
 *
 * @param note id, phase, name and source
 * @param place the file it stands in
 * @param outcome what it says, in a few words
 * @param verdict what it finds
 * @param questions what it finds it about; empty for cautions and refusals
 * @param reads each fact it reads, in words
 * @param figures the rows it reads
 * @param words how its finding is told
 * @param cases the cases that show it fire
 */
public record RuleEntry(
    RuleNote note,
    String place,
    String outcome,
    Verdict verdict,
    List<Question> questions,
    List<String> reads,
    List<Figure> figures,
    Map<Reader, String> words,
    List<String> cases) {
  public RuleEntry {
    questions = List.copyOf(questions);
    reads = List.copyOf(reads);
    figures = List.copyOf(figures);
    words = Map.copyOf(words);
    cases = List.copyOf(cases);
  }

  public String id() {
    return note.id();
  }
}
