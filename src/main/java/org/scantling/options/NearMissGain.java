package org.scantling.options;

import java.util.List;
import java.util.OptionalDouble;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Member;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.NearMissRow;

/** What another structure would spare, beside the one that is proposed. */
final class NearMissGain {
  private static final List<Question> SIZES =
      List.of(Question.POST_SIZE, Question.HEADER_SIZE, Question.CROSSBEAM_SIZE);

  private final Proposal today;

  /**
   * @param today with a structure
   */
  NearMissGain(Proposal today) {
    this.today = today;
  }

  /** True where there is something to be gained that somebody would speak of. */
  boolean wanted(NearMissRow row) {
    return switch (row.gains()) {
      case SIZE ->
          SIZES.stream().flatMap(each -> today.decision(each).stream()).anyMatch(this::grown);
      case DEPTH -> depthIn(today).stream().anyMatch(each -> each >= row.from());
      case POSTS -> posts(today) >= row.from();
    };
  }

  private boolean grown(Decision decision) {
    return decision.base().isPresent() && decision.changed();
  }

  /** True where it comes out with enough less of that, and at no price that nobody would pay. */
  boolean enough(NearMissRow row, Proposal then) {
    double mostCuIn = (1 + row.timberMoreRatio()) * timberCuIn(structure(today));
    double mostIn = row.deeperIn() + depthIn(today).orElse(Double.POSITIVE_INFINITY);
    return timberCuIn(structure(then)) <= mostCuIn
        && depthIn(then).orElse(0) <= mostIn
        && switch (row.gains()) {
          case SIZE -> smaller(then);
          case DEPTH ->
              depthIn(then).isPresent()
                  && depthIn(today).orElseThrow() - depthIn(then).getAsDouble() >= row.gain();
          case POSTS -> posts(today) - posts(then) >= row.gain();
        };
  }

  /** Some timber is smaller and none is larger. */
  private boolean smaller(Proposal then) {
    boolean smaller = false;
    for (Question size : SIZES) {
      int compared = Double.compare(sectionSqIn(then, size), sectionSqIn(today, size));
      if (compared > 0) {
        return false;
      }
      smaller |= compared < 0;
    }
    return smaller;
  }

  /** Of all plies that lie side by side. */
  private static double sectionSqIn(Proposal proposal, Question size) {
    return structure(proposal).members().stream()
        .filter(each -> each.role().equals(size.subject()))
        .mapToDouble(each -> each.plies() * each.breadthIn() * each.depthIn())
        .max()
        .orElse(0);
  }

  private static double timberCuIn(Structure structure) {
    return structure.members().stream().mapToDouble(NearMissGain::volumeCuIn).sum();
  }

  private static double volumeCuIn(Member member) {
    return member.breadthIn() * member.depthIn() * member.lengthIn() * member.count();
  }

  private static OptionalDouble depthIn(Proposal proposal) {
    return proposal.decision(Question.FOOTING_DEPTH).stream()
        .map(Decision::proposed)
        .mapToDouble(each -> ((Outcome.Amount) each).measure().amount())
        .findFirst();
  }

  private static int posts(Proposal proposal) {
    return structure(proposal).footings().count();
  }

  private static Structure structure(Proposal proposal) {
    return ((Proposal.Result.Proposed) proposal.result()).structure();
  }
}
