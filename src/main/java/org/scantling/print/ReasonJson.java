package org.scantling.print;

import java.util.List;
import java.util.Optional;
import org.scantling.design.BaseDesign;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Contribution;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Source;
import org.scantling.reasons.TrackRecord;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Decisions, reasons, checks and cautions, with the builder's words for text. */
final class ReasonJson {
  private final Voice voice;

  ReasonJson(Words words, Reader reader) {
    this.voice = words.voice(reader, UnitSystem.IMPERIAL);
  }

  ArrayNode decisions(List<Decision> decisions) {
    ArrayNode nodes = array();
    decisions.forEach(each -> nodes.add(decision(each)));
    return nodes;
  }

  ObjectNode decision(Decision decision) {
    ObjectNode node = JsonText.object();
    node.put("subject", decision.question().subject());
    node.put("attribute", decision.question().attribute());
    decision.base().ifPresentOrElse(base -> put(node, "base", base), () -> node.putNull("base"));
    put(node, "proposed", decision.proposed());
    node.put("unit", decision.question().unit().imperialSymbol());
    node.put("changed", decision.changed());
    ArrayNode reasons = node.putArray("reasons");
    decision.reasons().forEach(each -> reasons.add(reason(each, Optional.of(decision))));
    ArrayNode rejected = node.putArray("rejected");
    decision.rejected().forEach(each -> rejected.add(rejection(each, decision)));
    ArrayNode contributions = node.putArray("movers");
    decision.contributions().forEach(each -> contributions.add(contribution(each)));
    return node;
  }

  /** Each check with its limit, and beside the base's own ratio where that is known. */
  ArrayNode checks(List<Checked> checks, CheckLimits checkLimits) {
    ArrayNode nodes = array();
    checks.forEach(each -> nodes.add(check(each, checkLimits)));
    return nodes;
  }

  /** The base design, since when it has stood and on what fall. */
  ObjectNode base(String title, CheckLimits checkLimits) {
    ObjectNode node = JsonText.object();
    node.put("title", title);
    checkLimits.record().ifPresent(record -> stood(node, record));
    return node;
  }

  private static void stood(ObjectNode node, TrackRecord record) {
    node.put("sinceYear", record.sinceYear());
    if (record.slopePercent() > 0) {
      node.put("slopePercent", JsonText.rounded(record.slopePercent()));
    }
    if (!record.events().isEmpty()) {
      ArrayNode events = node.putArray("record");
      for (BaseDesign.Event each : record.events()) {
        ObjectNode event = events.addObject();
        event.put("date", each.date()).put("kind", each.kind()).put("what", each.what());
        each.photo().ifPresent(photo -> event.put("photo", photo));
      }
    }
  }

  ArrayNode cautions(List<Reason> cautions) {
    ArrayNode nodes = array();
    for (Reason caution : cautions) {
      ObjectNode node = nodes.addObject();
      node.put("rule", caution.note().id());
      node.put("text", voice.sentence(caution));
      if (caution.finding() instanceof Finding.Caution finding) {
        node.put("severity", finding.severity().word());
      }
      node.set("source", source(caution.source()));
    }
    return nodes;
  }

  /** The demand that breaks it and how close it came. */
  ObjectNode broken(Result.NeedsEngineer result) {
    ObjectNode node = JsonText.object();
    node.put("demand", result.demand());
    result.broken().ifPresent(question -> node.put("question", question.id()));
    if (result.reason().finding() instanceof Finding.Reject reject) {
      node.put("option", reject.option());
      node.put("check", reject.check());
      JsonText.ratio(node, reject.ratio());
    } else if (result.reason().finding() instanceof Finding.Refuse refuse) {
      JsonText.ratio(node, refuse.ratio());
    }
    node.set("reason", reason(result.reason(), Optional.empty()));
    result.against().ifPresent(each -> node.set("against", reason(each, Optional.empty())));
    return node;
  }

  private static ObjectNode check(Checked checked, CheckLimits checkLimits) {
    ObjectNode node = JsonText.object();
    node.put("id", checked.id());
    node.put("role", checked.role());
    node.put("combination", checked.combination());
    node.put("loadDuration", JsonText.rounded(checked.loadDurationFactor()));
    node.put("demand", JsonText.rounded(checked.check().demand()));
    node.put("capacity", JsonText.rounded(checked.check().capacity()));
    node.put("unit", word(checked.unit()));
    JsonText.ratio(node, checked.check().ratio());
    node.put("limitRatio", JsonText.rounded(checkLimits.limitRatio(checked)));
    checkLimits
        .baseRatio(checked)
        .ifPresentOrElse(
            ratio -> node.put("baseRatio", JsonText.rounded(ratio)),
            () -> node.putNull("baseRatio"));
    node.set("source", source(checked.source()));
    return node;
  }

  private ObjectNode reason(Reason reason, Optional<Decision> decision) {
    ObjectNode node = JsonText.object();
    node.put("rule", reason.note().id());
    node.put(
        "text",
        decision.map(each -> voice.sentence(reason, each)).orElseGet(() -> voice.sentence(reason)));
    node.set("source", source(reason.source()));
    node.put("governing", reason.governing());
    reason.because().forEach(node.putArray("because")::add);
    return node;
  }

  private ObjectNode rejection(Reason reason, Decision decision) {
    ObjectNode node = JsonText.object();
    Finding.Reject reject = (Finding.Reject) reason.finding();
    node.put("option", reject.option());
    node.put("rule", reason.note().id());
    node.put("check", reject.check());
    JsonText.ratio(node, reject.ratio());
    node.put("text", voice.sentence(reason, decision));
    return node;
  }

  /** The rule behind a sentence, and its source. */
  ObjectNode told(Reason reason, String text) {
    ObjectNode node = JsonText.object();
    node.put("rule", reason.note().id());
    node.put("text", text);
    node.set("source", source(reason.source()));
    return node;
  }

  private static ObjectNode contribution(Contribution contribution) {
    ObjectNode node = JsonText.object();
    node.put("question", contribution.question().id());
    node.put("shareRatio", JsonText.rounded(contribution.shareRatio()));
    return node;
  }

  static void put(ObjectNode node, String key, Outcome outcome) {
    if (outcome instanceof Outcome.Amount amount) {
      amount(node, key, amount.measure());
    } else {
      node.put(key, ((Outcome.Word) outcome).text());
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

  static ObjectNode source(Source source) {
    ObjectNode node = JsonText.object();
    node.put("kind", source.kind().word());
    node.put("citation", source.text());
    return node;
  }

  static String word(Unit unit) {
    return unit.imperialSymbol().isEmpty() ? "ratio" : unit.imperialSymbol();
  }

  private static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }
}
