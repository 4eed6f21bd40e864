package org.scantling.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.print.Block.Step;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Proposal;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** The way from a decision back to the site file, each step once. */
final class Chain {
  private final Causes causes;
  private final Set<String> given;
  private final Voice voice;
  private final Set<String> told = new HashSet<>();
  private final List<Step> steps = new ArrayList<>();

  Chain(Proposal proposal, Words words, Voice voice) {
    this.causes = new Causes(proposal, words.reads());
    this.given =
        proposal.given().stream().map(each -> each.demand().path()).collect(Collectors.toSet());
    this.voice = voice;
  }

  List<Step> of(Decision decision) {
    tell(decision, 0);
    return List.copyOf(steps);
  }

  private void tell(Decision decision, int depth) {
    if (told.add(decision.question().id())) {
      steps.add(
          new Step(
              depth,
              decision.question().id()
                  + " = "
                  + voice.say(decision.question(), decision.proposed())
                  + "  <- "
                  + decision.governing().note().id()));
      causes.of(decision).forEach(each -> tell(each, depth + 1));
    }
  }

  private void tell(String reference, int depth) {
    Optional<Decision> decision = causes.decision(reference);
    if (decision.isPresent()) {
      tell(decision.get(), depth);
    } else if ((!path(reference) || given.contains(reference)) && told.add(reference)) {
      steps.add(new Step(depth, leaf(reference)));
    }
  }

  private String leaf(String reference) {
    return path(reference)
        ? Sayings.of("why").say("site-file", "path", reference)
        : voice.reference(reference);
  }

  /** True for a path of the site file, which counts only where the file has it. */
  private static boolean path(String reference) {
    return Stream.of(Demand.values()).anyMatch(demand -> demand.path().equals(reference));
  }
}
