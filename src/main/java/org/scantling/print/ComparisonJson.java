package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Several proposals side by side, for programs: what differs first. */
public final class ComparisonJson {
  private final SideBySide comparison;
  private final Voice voice;

  private ComparisonJson(SideBySide comparison, Voice voice) {
    this.comparison = comparison;
    this.voice = voice;
  }

  public static String of(List<ComparedSite> columns, Words words) {
    Voice voice = words.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
    return JsonText.print(new ComparisonJson(new SideBySide(columns, words), voice).whole());
  }

  private ObjectNode whole() {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/compare/1");
    ArrayNode sites = node.putArray("sites");
    for (int i = 0; i < comparison.columns().size(); i++) {
      sites.add(site(i, comparison.columns().get(i)));
    }
    List<SubjectRow> rows = new ArrayList<>(comparison.rows());
    rows.sort(
        (one, other) -> Boolean.compare(!comparison.differs(one), !comparison.differs(other)));
    ArrayNode decisions = node.putArray("decisions");
    rows.forEach(row -> decisions.add(decision(row)));
    return node;
  }

  private ObjectNode site(int index, ComparedSite column) {
    ObjectNode node = JsonText.object();
    node.put("site", SideBySide.letter(index));
    node.put("file", column.file());
    column.settings().forEach(node.putArray("set")::add);
    node.put("title", column.proposal().title());
    node.put("base", column.proposal().baseTitle());
    node.put("status", column.proposal().proposed() ? "proposed" : "needs-engineer");
    column.figures().ifPresent(figures -> figures.json().accept(node));
    if (column.proposal().result() instanceof Result.NeedsEngineer none) {
      node.put("demand", none.demand());
      none.broken().map(Question::id).ifPresent(id -> node.put("question", id));
      node.set("reason", reason(none.reason(), voice.sentence(none.reason())));
      none.against().ifPresent(each -> node.set("against", reason(each, voice.sentence(each))));
    }
    return node;
  }

  private ObjectNode decision(SubjectRow row) {
    Question question = row.question();
    ObjectNode node = JsonText.object();
    node.put("subject", question.subject());
    node.put("attribute", question.attribute());
    if (question.numeric()) {
      node.put("unit", unit(question.unit()));
    }
    node.put("differs", comparison.differs(row));
    put(node, "base", comparison.oneBase() ? comparison.base(question) : Optional.empty());
    ArrayNode values = node.putArray("values");
    for (int i = 0; i < comparison.columns().size(); i++) {
      String letter = SideBySide.letter(i);
      comparison
          .decision(row, comparison.columns().get(i))
          .ifPresent(each -> values.add(value(letter, each)));
    }
    return node;
  }

  private ObjectNode value(String site, Decision decision) {
    ObjectNode node = JsonText.object();
    node.put("site", site);
    put(node, "proposed", Optional.of(decision.proposed()));
    node.put("changed", decision.changed());
    node.set(
        "reason", reason(decision.governing(), voice.sentence(decision.governing(), decision)));
    return node;
  }

  private static ObjectNode reason(Reason reason, String text) {
    ObjectNode node = JsonText.object();
    node.put("rule", reason.note().id());
    node.put("text", text);
    node.putObject("source")
        .put("kind", reason.source().kind().word())
        .put("citation", reason.source().text());
    return node;
  }

  private static String unit(Unit unit) {
    return unit.imperialSymbol().isEmpty()
        ? unit.name().toLowerCase(Locale.ROOT)
        : unit.imperialSymbol();
  }

  private static void put(ObjectNode node, String key, Optional<Outcome> outcome) {
    if (outcome.isEmpty()) {
      node.putNull(key);
    } else if (outcome.get() instanceof Outcome.Amount amount) {
      amount(node, key, amount.measure());
    } else {
      node.put(key, ((Outcome.Word) outcome.get()).text());
    }
  }

  /** Counts are whole. */
  private static void amount(ObjectNode node, String key, Measure measure) {
    if (measure.unit() == Unit.COUNT) {
      node.put(key, Math.round(measure.amount()));
    } else {
      node.put(key, JsonText.rounded(measure.amount()));
    }
  }
}
