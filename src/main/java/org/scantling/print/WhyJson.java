package org.scantling.print;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Decision;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;
import org.scantling.words.Topic;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One decision explained, as JSON, with the text for one reader. */
public final class WhyJson {
  private static final String SCHEMA = "scantling/why/1";

  private WhyJson() {}

  /**
   * @param back what would bring the base's answer back, where that was searched
   */
  public static String of(
      Proposal proposal, Words words, Topic topic, Optional<LeastChange> back, Reader reader) {
    ObjectNode root = JsonText.object();
    root.put("schema", SCHEMA);
    root.put("status", proposal.proposed() ? "proposed" : "needs-engineer");
    root.put("title", proposal.title());
    BasesJson.put(root, proposal.bases(), words);
    root.put("topic", topic.name());
    root.put("reader", reader.name().toLowerCase(java.util.Locale.ROOT));
    root.put(
        "text",
        WhyMarkdown.of(
            proposal, words, topic, back, reader, PrintOptions.plain(UnitSystem.IMPERIAL)));
    ArrayNode decisions = root.putArray("decisions");
    ReasonJson reasons = new ReasonJson(words, reader);
    List<Decision> told =
        topic.questions().stream()
            .flatMap(question -> proposal.decision(question).stream())
            .toList();
    told.stream().map(reasons::decision).forEach(decisions::add);
    Voice voice = words.voice(reader, UnitSystem.IMPERIAL);
    back.ifPresent(least -> new KeepJson(least, words, reader).put(root.putObject("bringsBack")));
    ArrayNode chain = root.putArray("chain");
    told.stream().findFirst().ifPresent(chief -> chain(chain, chief, proposal, words));
    List<CalculationStep> steps = CalculationTrace.behind(told, proposal, voice);
    TraceJson trace = new TraceJson(words, reader);
    root.set("workings", trace.steps(steps));
    root.set("symbols", trace.symbols(steps));
    return JsonText.print(root);
  }

  private static void chain(ArrayNode chain, Decision chief, Proposal proposal, Words words) {
    for (Block.Step step :
        new Chain(proposal, words, words.voice(Reader.ENGINEER, UnitSystem.IMPERIAL)).of(chief)) {
      chain.addObject().put("depth", step.depth()).put("text", step.text());
    }
  }
}
