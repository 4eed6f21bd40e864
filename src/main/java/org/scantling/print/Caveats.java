package org.scantling.print;

import java.util.List;
import java.util.function.Predicate;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Stated;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** What goes with a proposal wherever it goes: its cautions, what was given, what was assumed. */
public final class Caveats {
  private Caveats() {}

  /** For the builder, at the end of a sheet. */
  public static void write(Page page, Proposal proposal, Words words, PrintOptions options) {
    write(page, Told.to(Reader.BUILDER, proposal, words, options.units()), options);
  }

  static void write(Page page, Told told, PrintOptions options) {
    cautions(page, told);
    given(page, "Given in the site file", told, stated -> !options.set(path(stated)));
    given(page, "Set beside the site file (--set)", told, stated -> options.set(path(stated)));
    if (told.proposal().proposed()) {
      new Assumed(told).write(page);
    }
  }

  private static void cautions(Page page, Told told) {
    if (!told.proposal().cautions().isEmpty()) {
      page.heading("Take care");
      page.add(
          Block.Items.of(told.proposal().cautions().stream().map(told.voice()::sentence).toList()));
    }
  }

  private static void given(Page page, String heading, Told told, Predicate<Stated> which) {
    List<String> given =
        told.proposal().given().stream().filter(which).map(told.voice()::stated).toList();
    if (!given.isEmpty()) {
      page.heading(heading).paragraph(Sentence.capital(String.join("; ", given) + "."));
    }
  }

  private static String path(Stated stated) {
    return stated.demand().setting();
  }
}
