package org.scantling.reasons;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;

/**
 * What the engine answers for a fixed design on a site: every check, and every limit of the rules
 * that the design breaks. Nothing is resized.
 *
 * @param title the site's title
 * @param designTitle the design's title
 * @param baseTitle the title of the base design that the site names
 * @param refusal why the site is a case for an engineer, if it is; nothing is worked then
 * @param checks every structural check, worst first
 * @param limits what the rules forbid, gravest first
 * @param unworked roles whose checks cannot be worked, because nothing holds the posts upright
 * @param decisions what the design leaves open and the rules have answered
 * @param cautions what a person must be told, gravest first
 * @param assumptions paths of the site file that were left out and decided by a rule
 * @param unsaid paths of the design file that were left out
 * @param checkLimits what the checks are held against
 */
public record Review(
    String title,
    String designTitle,
    String baseTitle,
    Optional<NeedsEngineer> refusal,
    List<Checked> checks,
    List<Shortfall> limits,
    List<String> unworked,
    List<Decision> decisions,
    List<Reason> cautions,
    List<String> assumptions,
    List<String> unsaid,
    CheckLimits checkLimits)
    implements Reasoned {

  public Review {
    checks = List.copyOf(checks);
    limits = List.copyOf(limits);
    unworked = List.copyOf(unworked);
    decisions = List.copyOf(decisions);
    cautions = List.copyOf(cautions);
    assumptions = List.copyOf(assumptions);
    unsaid = List.copyOf(unsaid);
  }

  /** The checks over their limit, worst first. */
  public List<Checked> failing() {
    return checks.stream().filter(each -> !checkLimits.passes(each)).toList();
  }

  public List<Shortfall> limits(Shortfall.Kind kind) {
    return limits.stream().filter(each -> each.kind() == kind).toList();
  }

  /** True where the design does for the site. */
  public boolean passes() {
    return refusal.isEmpty()
        && unworked.isEmpty()
        && failing().isEmpty()
        && limits.stream().noneMatch(each -> each.kind().fails());
  }
}
