package org.scantling.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Contribution;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.words.SubjectRow;
import org.scantling.words.Subjects;
import org.scantling.words.Words;

/**
 * What is different here and put a decision where it is. Where the governing number was worked out,
 * the changed answers that moved it; else those that its rule read. An answer that only follows
 * from others is told by the ones it follows from.
 */
final class Drivers {
  private static final int MOST = 4;

  private final Proposal proposal;
  private final Causes causes;
  private final Subjects subjects;

  Drivers(Proposal proposal, Words words) {
    this.proposal = proposal;
    this.causes = new Causes(proposal, words.reads());
    this.subjects = words.subjects();
  }

  /** The one that did most first; where nothing was worked out, in the order of the report. */
  List<Decision> of(Decision decision) {
    return all(decision).stream()
        .filter(each -> !behind(each).contains(decision.question()))
        .limit(MOST)
        .toList();
  }

  private Set<Decision> all(Decision decision) {
    Set<Decision> all = new LinkedHashSet<>();
    if (decision.contributions().isEmpty()) {
      all.addAll(read(decision));
    }
    for (Contribution contribution : decision.contributions()) {
      proposal.decision(contribution.question()).ifPresent(each -> all.addAll(named(each)));
    }
    return all;
  }

  /**
   * A decision, its chief cause, the chief cause of that, and so on: what a decision brought about
   * is no cause of it.
   */
  private Set<Question> behind(Decision decision) {
    Set<Question> behind = new HashSet<>();
    Optional<Decision> each = Optional.of(decision);
    while (each.isPresent() && behind.add(each.get().question())) {
      each = all(each.get()).stream().findFirst();
    }
    return behind;
  }

  /** True where the order of the causes is that of what they did. */
  boolean ranked(Decision decision) {
    return decision.contributions().size() > 1;
  }

  /**
   * True where the causes were worked out, and not only read, for something that carries: how many
   * pieces a row is laid out in is no matter of load.
   */
  boolean worked(Decision decision) {
    return !decision.contributions().isEmpty() && !row(decision).follows();
  }

  /** A changed answer itself, or the changed ones from which it follows. */
  private List<Decision> named(Decision decision) {
    if (row(decision).driver()) {
      return List.of(decision);
    }
    List<Decision> behind = read(decision);
    return behind.isEmpty() ? List.of(decision) : behind;
  }

  /** The nearest changed answers on the way back from a decision, in the order of the report. */
  private List<Decision> read(Decision decision) {
    Set<Question> seen = new HashSet<>(Set.of(decision.question()));
    List<Decision> found = new ArrayList<>();
    causes.of(decision).forEach(each -> walk(each, seen, found));
    return subjects.rows().stream()
        .flatMap(row -> found.stream().filter(each -> each.question() == row.question()))
        .toList();
  }

  /** An answer that is as in the base passes nothing on. */
  private void walk(String reference, Set<Question> seen, List<Decision> found) {
    Optional<Decision> decision = causes.decision(reference);
    if (decision.isEmpty() || !seen.add(decision.get().question())) {
      return;
    }
    Decision each = decision.get();
    if (each.changed() && row(each).driver()) {
      found.add(each);
    } else if (each.changed() || each.base().isEmpty()) {
      causes.of(each).forEach(next -> walk(next, seen, found));
    }
  }

  private SubjectRow row(Decision decision) {
    return subjects.row(decision.question());
  }
}
