package org.scantling.print;

import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Reason;

/** What the site file asked for and did not get: it is told before what stood against it. */
final class Unmet {
  private Unmet() {}

  /**
   * The wish that gave way, where a bound or a check governs; none of what only follows by measure,
   * for nobody asks for that by itself.
   */
  static Optional<Reason> wish(Told told, Decision decision) {
    boolean follows = told.words().subjects().row(decision.question()).follows();
    return follows || wished(decision.governing().finding())
        ? Optional.empty()
        : decision.reasons().stream().filter(each -> asked(each.finding())).findFirst();
  }

  private static boolean wished(Finding finding) {
    return finding instanceof Finding.PreferNumber || finding instanceof Finding.PreferOption;
  }

  private static boolean asked(Finding finding) {
    return (finding instanceof Finding.PreferNumber number && number.priority() == Priority.ASKED)
        || (finding instanceof Finding.PreferOption option && option.priority() == Priority.ASKED);
  }
}
