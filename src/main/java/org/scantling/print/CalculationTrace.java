package org.scantling.print;

import java.util.List;
import java.util.stream.Stream;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.words.CalculationWords;
import org.scantling.words.Voice;

/** Which steps of working stand behind some decisions. */
final class CalculationTrace {
  private CalculationTrace() {}

  static List<CalculationStep> behind(List<Decision> decisions, Proposal proposal, Voice voice) {
    List<String> roles =
        decisions.stream()
            .flatMap(each -> Stream.of(each.question().subject(), each.question().id()))
            .distinct()
            .toList();
    return proposal.trace().stream()
        .filter(
            each -> roles.stream().anyMatch(role -> CalculationWords.of(voice).works(each, role)))
        .toList();
  }
}
