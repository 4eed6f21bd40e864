package org.scantling.depths;

import java.util.List;
import java.util.Optional;
import org.scantling.answers.ResultCache;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reasoned;
import org.scantling.reasons.Review;

/** Works tables of hole depths out, one structure and place after the other. */
public final class DepthTables {
  private final Engine engine;
  private final ResultCache cache = new ResultCache(ResultCache.Retention.MANY_RUNS);

  public DepthTables(Engine engine) {
    this.engine = engine;
  }

  /** Every cell; where there is only one, it is the answer and no table follows. */
  public DepthTable of(DepthRequest request) {
    List<DepthCase> cases = request.cases();
    Review first = whole(request, cases.get(0));
    return request.single()
        ? new DepthTable(request, List.of(), Optional.of(here(cases.get(0), first)), first)
        : new DepthTable(request, rows(request), Optional.empty(), first);
  }

  /**
   * The hole of a site first, then the table around it, if more than that was asked for.
   *
   * @param here what the site itself asks
   * @param proposal the structure that was proposed for it, if it is built as proposed
   */
  public DepthTable of(DepthRequest request, DepthCase here, Optional<Proposal> proposal) {
    Reasoned answer = proposal.map(Reasoned.class::cast).orElseGet(() -> whole(request, here));
    DepthTable.Here told =
        answer instanceof Review review
            ? here(here, review)
            : new DepthTable.Here(DepthRow.answered(here, answer).orElseThrow(), answer.cautions());
    boolean alone = request.single() && request.cases().get(0).equals(here);
    return new DepthTable(request, alone ? List.of() : rows(request), Optional.of(told), answer);
  }

  /** One hole of a structure that is decided but for that. */
  public DepthRow row(Site site, BaseDesign design, DepthCase at) {
    return DepthRow.of(at, engine.holes(at.on(site), at.of(design), cache));
  }

  private List<DepthRow> rows(DepthRequest request) {
    return request.cases().stream()
        .map(each -> row(request.site(), request.design(), each))
        .toList();
  }

  private static DepthTable.Here here(DepthCase at, Review review) {
    return new DepthTable.Here(DepthRow.of(at, review), review.cautions());
  }

  /** The same structure with its cautions. */
  private Review whole(DepthRequest request, DepthCase at) {
    BaseDesign design = at.of(request.design()).withoutHoles();
    return engine.check(at.on(request.site()), design, List.of(), List.of());
  }
}
