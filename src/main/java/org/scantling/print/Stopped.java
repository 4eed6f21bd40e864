package org.scantling.print;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.Reason;
import org.scantling.words.Voice;

/** What stopped a site: what is wanted and, of a number, the limit that it leads past. */
final class Stopped {
  private Stopped() {}

  static String sentences(Voice voice, NeedsEngineer result) {
    return reasons(result).map(voice::sentence).collect(Collectors.joining(" "));
  }

  /** The same, each with its source. */
  static String sourced(Voice voice, NeedsEngineer result) {
    return reasons(result)
        .map(each -> Sourced.sentence(voice, each))
        .collect(Collectors.joining(" "));
  }

  private static Stream<Reason> reasons(NeedsEngineer result) {
    return Stream.concat(Stream.of(result.reason()), result.against().stream());
  }
}
