package org.scantling.print;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Words;

/** What is not as in the base, one thing after the other, as a client is told it. */
public final class ClientChanges {
  private final Told told;
  private final ClientWhy why;

  public ClientChanges(Proposal proposal, Words words, UnitSystem units) {
    this.told = Told.to(Reader.CLIENT, proposal, words, units);
    this.why = new ClientWhy(told, Optional.empty());
  }

  /**
   * One thing that changed.
   *
   * @param label what it is, as a heading
   * @param answer how it is here and how it was
   * @param because why
   */
  public record Change(Question question, String label, String answer, String because) {}

  /** What one sees and what carries, in the order of a report. */
  public List<Change> chief() {
    return told.words().subjects().rows().stream()
        .filter(row -> changed(row) && (row.driver() || row.safety()))
        .map(row -> change(decision(row).orElseThrow()))
        .toList();
  }

  /** The small things beside. */
  public List<Block.Item> others() {
    return told.words().subjects().rows().stream()
        .filter(row -> changed(row) && !row.driver() && !row.safety())
        .map(row -> why.item(decision(row).orElseThrow()))
        .toList();
  }

  private Change change(Decision decision) {
    return new Change(
        decision.question(),
        Sentence.capital(told.voice().label(decision.question())),
        why.answer(decision),
        why.because(decision));
  }

  /** What belongs to the place, and what only follows from the rest, has no reason of its own. */
  private boolean changed(SubjectRow row) {
    return !row.place()
        && !row.follows()
        && !row.joint()
        && decision(row).filter(Decision::changed).isPresent();
  }

  private Optional<Decision> decision(SubjectRow row) {
    return told.proposal().decision(row.question());
  }
}
