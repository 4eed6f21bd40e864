package org.scantling.print;

import java.util.function.Consumer;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ObjectNode;

/** A proposal as JSON for programs: inches, pounds and psf whatever people read. */
public final class ProposalJson {
  private static final String SCHEMA = "scantling/proposal/1";

  private ProposalJson() {}

  public static String of(Proposal proposal, Words words) {
    return of(proposal, words, root -> {});
  }

  /**
   * The same.
   *
   * @param more adds what others work out of the proposal
   */
  public static String of(Proposal proposal, Words words, Consumer<ObjectNode> more) {
    ObjectNode root = node(proposal, words);
    more.accept(root);
    return JsonText.print(root);
  }

  /** The same on one line, for a batch. */
  public static String line(Proposal proposal, Words words) {
    return node(proposal, words).toString();
  }

  private static ObjectNode node(Proposal proposal, Words words) {
    ObjectNode root = JsonText.object();
    root.put("schema", SCHEMA);
    root.put("status", proposal.proposed() ? "proposed" : "needs-engineer");
    root.put("title", proposal.title());
    ReasonJson reasons = new ReasonJson(words, Reader.BUILDER);
    root.set("base", reasons.base(proposal.baseTitle(), proposal.checkLimits()));
    proposal.bases().ifPresent(choice -> root.set("bases", BasesJson.of(choice, words)));
    if (proposal.result() instanceof Result.NeedsEngineer broken) {
      root.set("broken", reasons.broken(broken));
    }
    root.set("criteria", CriteriaJson.of(proposal));
    if (proposal.result() instanceof Result.Proposed done) {
      StructureJson structure = new StructureJson(done.structure());
      root.set("layout", structure.layout());
      root.set("members", structure.members());
      root.set("footings", structure.footings());
    }
    root.set("checks", reasons.checks(proposal.checks(), proposal.checkLimits()));
    root.set("decisions", reasons.decisions(proposal.decisions()));
    root.set("cautions", reasons.cautions(proposal.cautions()));
    root.putArray("turningPoints");
    proposal.assumptions().forEach(root.putArray("assumptions")::add);
    TraceJson trace = new TraceJson(words, Reader.BUILDER);
    root.set("workings", trace.steps(proposal.trace()));
    root.set("symbols", trace.symbols(proposal.trace()));
    return root;
  }
}
