package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.words.Reads;

/** What stands behind a reference: the next references towards the site file. */
final class Causes {
  private static final String BASE = "base:";

  private final Proposal proposal;
  private final Reads reads;

  Causes(Proposal proposal, Reads reads) {
    this.proposal = proposal;
    this.reads = reads;
  }

  /** The decision that a reference is about, by question or by its answer. */
  Optional<Decision> decision(String reference) {
    return proposal.decisions().stream()
        .filter(each -> each.question().id().equals(reference) || answers(each, reference))
        .findFirst();
  }

  /** What the governing finding of a decision read. */
  List<String> of(Decision decision) {
    return of(decision.governing(), decision.question().id());
  }

  /**
   * What a finding read, results of the kernels traced on to what they were made from.
   *
   * @param own the question itself, whose worked number may bear its name
   */
  List<String> of(Reason reason, String own) {
    List<String> causes = new ArrayList<>();
    String combination = combination(reason);
    for (String reference : reason.because()) {
      List<String> made = reads.of(reference, combination);
      boolean decided = decision(reference).isPresent() && !reference.equals(own);
      if (decided || made.isEmpty() || !reference.contains("=")) {
        causes.add(reference);
      }
      if (!decided) {
        causes.addAll(made);
      }
    }
    causes.removeIf(each -> each.equals(own) || each.contains("="));
    return causes.stream().distinct().toList();
  }

  static boolean base(String reference) {
    return reference.startsWith(BASE);
  }

  private static String combination(Reason reason) {
    return reason
        .finding()
        .evidence()
        .find("combination")
        .filter(Evidence.Seen.Word.class::isInstance)
        .map(seen -> ((Evidence.Seen.Word) seen).text())
        .orElse("");
  }

  /** A row of a table by whose id a question was answered, such as the climber's. */
  private static boolean answers(Decision decision, String reference) {
    return decision.proposed() instanceof Outcome.Word word
        && word.text().equals(reference)
        && !(decision.governing().finding() instanceof Finding.Reject);
  }
}
