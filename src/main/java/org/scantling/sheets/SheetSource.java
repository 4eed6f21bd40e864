package org.scantling.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.scantling.design.Structure;
import org.scantling.drawing.DetailDrawing;
import org.scantling.drawing.Drawings;
import org.scantling.drawing.View;
import org.scantling.print.NearMissPage;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.SmallChange;
import org.scantling.reasons.WholeOptions;
import org.scantling.shop.Estimate;
import org.scantling.shop.Lists;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/**
 * What sheets are made of.
 *
 * @param proposal of a structure
 * @param how units, and what was set beside the site file
 * @param estimate where something is priced
 * @param ways to build it, for the client to choose from, where they were asked for
 * @param near small changes that would spare something, worked out when a sheet tells them
 * @param version of the program
 */
public record SheetSource(
    Proposal proposal,
    Words words,
    PrintOptions how,
    Lists lists,
    Drawings drawings,
    Optional<Estimate> estimate,
    Optional<WholeOptions> ways,
    Supplier<List<SmallChange>> near,
    String version) {

  Structure structure() {
    return ((Proposal.Result.Proposed) proposal.result()).structure();
  }

  Voice voice(Reader reader) {
    return words.voice(reader, how.units());
  }

  String inches(Reader reader, double amountIn) {
    return voice(reader).say(Measure.inches(amountIn));
  }

  /** The small changes as they are told beside a proposal. */
  Page nearMisses(Reader reader) {
    return NearMissPage.told(near.get(), proposal, words, reader, how.units());
  }

  Part.Figure figure(DetailDrawing detail) {
    return new Part.Figure(room -> drawings.sheet(detail, room));
  }

  Part.Figure figure(View view) {
    return new Part.Figure(room -> drawings.sheet(view, room));
  }
}
