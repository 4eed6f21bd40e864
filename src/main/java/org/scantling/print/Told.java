package org.scantling.print;

import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What an explanation needs at hand: the proposal, the words, and the voice for the reader. */
record Told(Proposal proposal, Words words, Voice voice) {
  static Told to(Reader reader, Proposal proposal, Words words, UnitSystem units) {
    return new Told(proposal, words, words.voice(reader, units));
  }
}
