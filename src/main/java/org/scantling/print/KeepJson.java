package org.scantling.print;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Change;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Way;
import org.scantling.words.ChangeWords;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What it takes for a wanted answer, as JSON for programs. */
public final class KeepJson {
  private static final String SCHEMA = "scantling/least-change/1";

  private final LeastChange least;
  private final WayWords words;

  KeepJson(LeastChange least, Words words, Reader reader) {
    this.least = least;
    this.words =
        new WayWords(Told.to(reader, least.today(), words, UnitSystem.IMPERIAL), least.wanted());
  }

  /**
   * @param choice how the base was chosen, where several were named
   */
  public static String of(
      LeastChange least, Words words, Reader reader, Optional<BaseChoice> choice) {
    ObjectNode root = JsonText.object();
    new KeepJson(least, words, reader)
        .put(root, reader, bases -> BasesJson.put(bases, choice, words));
    return JsonText.print(root);
  }

  private void put(ObjectNode root, Reader reader, Consumer<ObjectNode> bases) {
    root.put("schema", SCHEMA);
    root.put("status", least.today().proposed() ? "proposed" : "needs-engineer");
    root.put("title", least.today().title());
    bases.accept(root);
    root.put("reader", reader.name().toLowerCase(Locale.ROOT));
    put(root);
    ArrayNode searched = root.putArray("searched");
    for (LeastChange.Searched each : least.searched()) {
      ObjectNode node = searched.addObject();
      node.put("demand", each.demand().path());
      ReasonJson.put(node, "least", each.least());
      ReasonJson.put(node, "most", each.most());
    }
  }

  /** What is wanted and what leads there. */
  void put(ObjectNode node) {
    Question question = least.wanted().question();
    node.put("subject", question.subject());
    node.put("attribute", question.attribute());
    ReasonJson.put(node, "wanted", least.wanted().value());
    node.put("bound", least.wanted().bound().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    WayWords.answer(least.today(), question)
        .ifPresentOrElse(now -> ReasonJson.put(node, "today", now), () -> node.putNull("today"));
    node.put("kept", least.kept());
    ArrayNode singles = node.putArray("singles");
    least.singles().forEach(way -> singles.add(way(way)));
    ArrayNode pairs = node.putArray("pairs");
    least.pairs().forEach(way -> pairs.add(way(way)));
  }

  private ObjectNode way(Way way) {
    ObjectNode node = JsonText.object();
    ArrayNode changes = node.putArray("changes");
    way.changes().forEach(each -> changes.add(change(each)));
    node.put("shareRatio", JsonText.rounded(way.shareRatio()));
    ArrayNode beside = node.putArray("alsoChanges");
    for (Question question : words.others(way)) {
      Optional<Outcome> before = WayWords.answer(least.today(), question);
      Optional<Outcome> then = WayWords.answer(way.then(), question);
      if (!before.equals(then)) {
        ObjectNode other = beside.addObject();
        other.put("question", question.id());
        before.ifPresentOrElse(
            each -> ReasonJson.put(other, "from", each), () -> other.putNull("from"));
        then.ifPresentOrElse(each -> ReasonJson.put(other, "to", each), () -> other.putNull("to"));
      }
    }
    ArrayNode cautions = node.putArray("newCautions");
    words.cautions(way).forEach(each -> cautions.add(each.note().id()));
    node.put("text", words.item(way).text());
    return node;
  }

  private static ObjectNode change(Change change) {
    ObjectNode node = JsonText.object();
    node.put("demand", change.setting());
    node.put(
        "unit",
        change.to() instanceof Outcome.Amount amount
            ? amount.measure().unit().imperialSymbol()
            : "word");
    ReasonJson.put(node, "from", change.from());
    ReasonJson.put(node, "to", change.to());
    node.put("choice", change.choice());
    node.put("shareRatio", JsonText.rounded(change.shareRatio()));
    node.put("set", ChangeWords.setting(change));
    return node;
  }
}
