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
    ObjectNode root = whole(proposal, words);
    more.accept(root);
    return JsonText.print(root);
  }

  /** What is built, and what changes from the base and why, without the workings. */
  public static ObjectNode brief(Proposal proposal, Words words) {
    return BriefJson.of(head(proposal, words), proposal, words);
  }

  private static ObjectNode head(Proposal proposal, Words words) {
    ObjectNode root = JsonText.object();
    root.put("schema", SCHEMA);
    root.put("status", proposal.proposed() ? "proposed" : "needs-engineer");
    root.put("title", proposal.title());
    ReasonJson reasons = new ReasonJson(words, Reader.BUILDER);
    root.set("base", reasons.base(proposal.baseTitle(), proposal.checkLimits()));
    BasesJson.put(root, proposal.bases(), words);
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
    return root;
  }

  /** The same as a node, for whoever puts it into another. */
  public static ObjectNode whole(Proposal proposal, Words words) {
    ObjectNode root = head(proposal, words);
    ReasonJson reasons = new ReasonJson(words, Reader.BUILDER);
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
