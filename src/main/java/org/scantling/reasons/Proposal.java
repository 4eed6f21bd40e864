package org.scantling.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Structure;

/**
 * What the engine answers for a site: a resized structure with its reasons, or a refusal with what
 * breaks it.
 *
 * @param title the site's title
 * @param baseTitle the base design's title
 * @param result the structure, or why there is none
 * @param decisions every answered question, in the order of answering
 * @param checks every structural check of the chosen sizes, worst combination each
 * @param cautions what a person must be told, gravest first
 * @param assumptions paths of the site file that were left out and decided by a rule
 * @param checkLimits what the checks are held against
 * @param trace how the loads behind the checks were worked, each step after what it reads; kept as
 *     it is given, since it may be worked out only when it is read
 * @param given what the site file states, in the order of its sections
 * @param bases how the base was chosen, where the site file names several
 * @param more what of the working only an engineer wants
 */
public record Proposal(
    String title,
    String baseTitle,
    Result result,
    List<Decision> decisions,
    List<Checked> checks,
    List<Reason> cautions,
    List<String> assumptions,
    CheckLimits checkLimits,
    List<CalculationStep> trace,
    List<Stated> given,
    Optional<BaseChoice> bases,
    MoreWorking more)
    implements Reasoned {

  public Proposal {
    decisions = List.copyOf(decisions);
    checks = List.copyOf(checks);
    cautions = List.copyOf(cautions);
    assumptions = List.copyOf(assumptions);
    given = List.copyOf(given);
  }

  /** Of a site whose file names one base. */
  public Proposal(
      String title,
      String baseTitle,
      Result result,
      List<Decision> decisions,
      List<Checked> checks,
      List<Reason> cautions,
      List<String> assumptions,
      CheckLimits checkLimits,
      List<CalculationStep> trace,
      List<Stated> given) {
    this(
        title,
        baseTitle,
        result,
        decisions,
        checks,
        cautions,
        assumptions,
        checkLimits,
        trace,
        given,
        Optional.empty(),
        MoreWorking.none());
  }

  /** The same, with what only an engineer wants. */
  public Proposal with(MoreWorking working) {
    return new Proposal(
        title,
        baseTitle,
        result,
        decisions,
        checks,
        cautions,
        assumptions,
        checkLimits,
        trace,
        given,
        bases,
        working);
  }

  /** The same, with how its base was chosen among several. */
  public Proposal choosing(BaseChoice choice) {
    List<Decision> all = new ArrayList<>(decisions);
    all.add(choice.decision());
    return new Proposal(
        title,
        baseTitle,
        result,
        all,
        checks,
        cautions,
        assumptions,
        checkLimits,
        trace,
        given,
        Optional.of(choice),
        more);
  }

  /** A structure, or none. */
  public sealed interface Result {
    /** A structure inside the rule base. */
    record Proposed(Structure structure) implements Result {}

    /**
     * A case for a licensed engineer.
     *
     * @param demand path of the demand that breaks it
     * @param broken the question that could not be answered, where it was one
     * @param reason what stopped the option that came closest, or the refusal
     * @param against of a number, the limit that {@code reason} leads past
     */
    record NeedsEngineer(
        String demand, Optional<Question> broken, Reason reason, Optional<Reason> against)
        implements Result {}
  }

  public boolean proposed() {
    return result instanceof Result.Proposed;
  }
}
