package org.scantling.print;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Stated;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What goes with a proposal wherever it goes: its cautions, what was given, what was assumed. */
public final class Caveats {
  private static final Sayings SAYINGS = Sayings.of("caveats");

  private Caveats() {}

  /** For the builder, at the end of a sheet. */
  public static void write(Page page, Proposal proposal, Words words, PrintOptions options) {
    write(page, proposal, words, options, Reader.BUILDER);
  }

  /** The same for any reader. */
  public static void write(
      Page page, Proposal proposal, Words words, PrintOptions options, Reader reader) {
    write(page, Told.to(reader, proposal, words, options.units()), options);
  }

  static void write(Page page, Told told, PrintOptions options) {
    cautions(page, told.proposal().cautions(), told.voice());
    List<Stated> given = told.proposal().given().stream().map(options::asWritten).toList();
    given(page, "given", told, keep(given, each -> !options.set(path(each))));
    List<Stated> set = keep(given, each -> options.set(path(each)));
    given(page, "set", told, set);
    if (told.proposal().proposed()) {
      new Assumed(told).write(page);
    } else {
      new Assumed(told).readings(page);
    }
  }

  /** What to mind, where there is anything. */
  static void cautions(Page page, List<Reason> cautions, Voice voice) {
    if (!cautions.isEmpty()) {
      page.heading(SAYINGS.say("cautions"));
      page.add(Block.Items.of(cautions.stream().map(voice::sentence).toList()));
    }
  }

  private static List<Stated> keep(List<Stated> given, Predicate<Stated> which) {
    return given.stream().filter(which).toList();
  }

  private static void given(Page page, String heading, Told told, List<Stated> given) {
    String said = given.stream().map(told.voice()::stated).collect(Collectors.joining("; "));
    if (!given.isEmpty()) {
      page.heading(SAYINGS.say(heading)).paragraph(Sentence.capital(said + "."));
    }
  }

  private static String path(Stated stated) {
    return stated.demand().setting();
  }
}
