package org.scantling.print;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
    List<Stated> given = told.proposal().given().stream().map(options::asWritten).toList();
    given(page, "Given in the site file", told, keep(given, each -> !options.set(path(each))));
    List<Stated> set = keep(given, each -> options.set(path(each)));
    given(page, "Set beside the site file (--set)", told, set);
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

  private static List<Stated> keep(List<Stated> given, Predicate<Stated> which) {
    return given.stream().filter(which).toList();
  }

  private static void given(Page page, String heading, Told told, List<Stated> given) {
    String said = given.stream().map(told.voice()::stated).collect(Collectors.joining("; "));
    if (!given.isEmpty()) {
      page.heading(heading).paragraph(Sentence.capital(said + "."));
    }
  }

  private static String path(Stated stated) {
    return stated.demand().setting();
  }
}
