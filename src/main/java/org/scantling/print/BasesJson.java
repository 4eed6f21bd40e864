package org.scantling.print;

import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.BaseCount;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal.Result.NeedsEngineer;
import org.scantling.reasons.TriedBase;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Every base that a site file names, for programs: which was taken, and what each would change. */
final class BasesJson {
  private final Words words;
  private final TakenBase taken;

  BasesJson(BaseChoice choice, Words words) {
    this.words = words;
    this.taken = new TakenBase(choice, words.voice(Reader.BUILDER, UnitSystem.IMPERIAL));
  }

  private static ArrayNode of(BaseChoice choice, Words words) {
    BasesJson json = new BasesJson(choice, words);
    ArrayNode nodes = JsonNodeFactory.instance.arrayNode();
    choice.tried().forEach(each -> nodes.add(json.base(each)));
    return nodes;
  }

  /** The same in an answer, where several were named; nothing where there was one. */
  static void put(ObjectNode answer, Optional<BaseChoice> choice, Words words) {
    choice.ifPresent(each -> answer.set("bases", of(each, words)));
  }

  private ObjectNode base(TriedBase base) {
    ObjectNode node = JsonText.object();
    node.put("title", base.proposal().baseTitle());
    node.put("file", base.file());
    node.put("taken", base.taken());
    node.put("status", base.proposal().proposed() ? "proposed" : "needs-engineer");
    if (base.proposal().result() instanceof NeedsEngineer none) {
      node.put("demand", none.demand());
    }
    ObjectNode counts = node.putObject("counts");
    base.counts().forEach(each -> count(counts, each));
    ArrayNode changes = node.putArray("changes");
    base.changed().stream()
        .flatMap(each -> base.proposal().decision(each).stream())
        .forEach(each -> changes.add(change(each)));
    base.reason()
        .ifPresentOrElse(
            reason ->
                node.set(
                    "reason",
                    new ReasonJson(words, Reader.BUILDER).told(reason, taken.reason(base))),
            () -> node.putObject("reason").put("text", taken.taken()));
    return node;
  }

  /** The key ends in the unit, as all keys do. */
  private static void count(ObjectNode counts, BaseCount each) {
    double amount = each.measure().amount();
    switch (each.measure().unit()) {
      case COUNT -> counts.put(each.what(), Math.round(amount));
      case RATIO -> counts.put(each.what() + "Ratio", JsonText.rounded(amount));
      default -> counts.put(each.what() + "In", JsonText.rounded(amount));
    }
  }

  private static ObjectNode change(Decision decision) {
    ObjectNode node = JsonText.object();
    node.put("subject", decision.question().subject());
    node.put("attribute", decision.question().attribute());
    decision
        .base()
        .ifPresentOrElse(base -> ReasonJson.put(node, "base", base), () -> node.putNull("base"));
    ReasonJson.put(node, "proposed", decision.proposed());
    return node;
  }
}
