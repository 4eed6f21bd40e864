package org.scantling.batch;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.scantling.batch.LineAnswer.Kind;
import org.scantling.intake.IntakeException;
import org.scantling.intake.Outside;
import org.scantling.intake.OutsideException;
import org.scantling.intake.Problem;
import org.scantling.intake.SiteLine;
import org.scantling.print.JsonText;
import org.scantling.print.ProposalJson;
import org.scantling.reasons.Proposal;
import org.scantling.sayings.Sayings;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Answers one line on one line of JSON, whatever is wrong with it. Safe to share. */
public final class LineAnswering {
  private final Words words;
  private final boolean whole;
  private final Function<SiteLine, Proposal> proposing;

  /**
   * @param whole true for the whole proposal, false for what is built and what changes
   * @param proposing reads a site and proposes its structure
   */
  public LineAnswering(Words words, boolean whole, Function<SiteLine, Proposal> proposing) {
    this.words = words;
    this.whole = whole;
    this.proposing = proposing;
  }

  @SuppressWarnings("IllegalCatch") // one line that fails must not take the others with it
  LineAnswer of(int line, SiteLine site) {
    ObjectNode node = JsonText.object();
    node.put("line", line);
    site.id().ifPresent(id -> put(node, id));
    Kind kind = Kind.ANSWERED;
    try {
      proposed(node, proposing.apply(site));
    } catch (OutsideException outside) {
      node.put("status", "needs-engineer");
      outside(node.putObject("refusal"), outside);
    } catch (IntakeException wrong) {
      node.put("status", "error");
      wrong(node.putObject("error"), wrong.problems(), line);
      kind = Kind.WRONG;
    } catch (RuntimeException | StackOverflowError fault) {
      node.put("status", "error");
      fault(node.putObject("error"), fault);
      kind = Kind.FAULT;
    }
    return new LineAnswer(line, node.toString(), kind);
  }

  private static void put(ObjectNode node, SiteLine.Id id) {
    if (id.number()) {
      node.put("id", new BigDecimal(id.text()));
    } else {
      node.put("id", id.text());
    }
  }

  private void proposed(ObjectNode node, Proposal proposal) {
    ObjectNode told =
        whole ? ProposalJson.whole(proposal, words) : ProposalJson.brief(proposal, words);
    node.put("status", proposal.proposed() ? "proposed" : "needs-engineer");
    node.set(proposal.proposed() ? "proposal" : "refusal", told);
  }

  private static void outside(ObjectNode refusal, OutsideException outside) {
    ArrayNode all = refusal.putArray("outside");
    for (Outside each : outside.found()) {
      ObjectNode node = all.addObject();
      node.put("field", each.field());
      node.put("found", each.found());
      node.put("because", each.because());
      node.put("for", each.whose());
      node.put("text", each.sentence());
    }
    if (!outside.problems().isEmpty()) {
      ArrayNode besides = refusal.putArray("problems");
      outside.problems().forEach(each -> problem(besides.addObject(), each));
    }
  }

  /** The first of what is wrong, as the line stands, and all of it. */
  private static void wrong(ObjectNode error, List<Problem> problems, int line) {
    Problem first =
        problems.stream()
            .filter(each -> each.line().orElse(line) == line)
            .findFirst()
            .orElse(problems.get(0));
    problem(error, first);
    ArrayNode all = error.putArray("problems");
    problems.forEach(each -> problem(all.addObject(), each));
  }

  private static void problem(ObjectNode node, Problem problem) {
    node.put("field", problem.field());
    node.put("found", problem.found());
    node.put("accepted", problem.accepted());
    node.put("text", problem.text());
  }

  private static void fault(ObjectNode error, Throwable fault) {
    error.put("field", "");
    error.put("found", "");
    error.put("accepted", "");
    error.put("text", Sayings.of("batch").say("fault", "what", String.valueOf(fault)));
  }
}
