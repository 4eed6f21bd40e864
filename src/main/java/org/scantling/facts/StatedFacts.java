package org.scantling.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Chosen;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Given;
import org.scantling.reasons.LargestAsked;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Stated;
import org.scantling.tables.UserRow;

/** Which of a site's facts its file states itself. */
public final class StatedFacts {
  private StatedFacts() {}

  /**
   * @param assumptions paths that the file leaves out
   */
  public static List<Stated> of(List<Fact> facts, List<String> assumptions) {
    List<Stated> stated = new ArrayList<>();
    for (Fact fact : facts) {
      stated(fact)
          .filter(each -> !assumptions.contains(each.demand().path()))
          .ifPresent(stated::add);
    }
    stated.sort(Comparator.comparing(Stated::demand));
    return stated;
  }

  private static Optional<Stated> stated(Fact fact) {
    if (fact instanceof Given given) {
      Measure measure = new Measure(given.number(), given.demand().unit());
      return Optional.of(new Stated(given.demand(), new Outcome.Amount(measure)));
    }
    if (fact instanceof Chosen chosen) {
      return Optional.of(new Stated(chosen.demand(), new Outcome.Word(chosen.word())));
    }
    if (fact instanceof LargestAsked largest) {
      return Optional.of(new Stated(largest.demand(), new Outcome.Word(largest.size())));
    }
    return fact instanceof UserRow user
        ? Optional.of(new Stated(Demand.USERS, new Outcome.Word(user.id())))
        : Optional.empty();
  }
}
