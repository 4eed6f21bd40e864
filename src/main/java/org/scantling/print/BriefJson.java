package org.scantling.print;

import java.util.Comparator;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What whoever compares many proposals reads of each: the tightest check, changes, cautions. */
final class BriefJson {
  private final Voice voice;

  private BriefJson(Words words) {
    this.voice = words.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
  }

  /** Adds it to the head of a proposal. */
  static ObjectNode of(ObjectNode root, Proposal proposal, Words words) {
    new BriefJson(words).add(root, proposal);
    return root;
  }

  private void add(ObjectNode root, Proposal proposal) {
    proposal.checks().stream()
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .ifPresent(
            each -> {
              ObjectNode tightest = root.putObject("tightest").put("id", each.id());
              JsonText.ratio(tightest, each.check().ratio());
            });
    ArrayNode changes = root.putArray("changes");
    proposal.decisions().stream()
        .filter(Decision::changed)
        .forEach(each -> change(changes.addObject(), each));
    ArrayNode cautions = root.putArray("cautions");
    proposal.cautions().forEach(each -> caution(cautions.addObject(), each));
    proposal.assumptions().forEach(root.putArray("assumptions")::add);
  }

  private void change(ObjectNode node, Decision decision) {
    node.put("subject", decision.question().subject());
    node.put("attribute", decision.question().attribute());
    decision
        .base()
        .ifPresentOrElse(base -> ReasonJson.put(node, "base", base), () -> node.putNull("base"));
    ReasonJson.put(node, "proposed", decision.proposed());
    node.put("unit", decision.question().unit().imperialSymbol());
    node.put("rule", decision.governing().note().id());
    node.put("text", voice.sentence(decision.governing(), decision));
  }

  private void caution(ObjectNode node, Reason caution) {
    node.put("rule", caution.note().id());
    if (caution.finding() instanceof Finding.Caution finding) {
      node.put("severity", finding.severity().word());
    }
    node.put("text", voice.sentence(caution));
  }
}
