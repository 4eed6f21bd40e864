package org.scantling.print;

import java.util.List;
import java.util.Locale;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Figure;
import org.scantling.rulebook.LintReport;
import org.scantling.rulebook.RuleEntry;
import org.scantling.words.Reader;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The rule base for programs. */
public final class RulesJson {
  private RulesJson() {}

  public static String of(List<RuleEntry> rules) {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/rules/1");
    ArrayNode all = node.putArray("rules");
    rules.forEach(rule -> all.add(rule(rule)));
    return JsonText.print(node);
  }

  public static String of(LintReport report) {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/lint/1");
    node.put("status", report.clean() ? "clean" : "wrong");
    ArrayNode complaints = node.putArray("complaints");
    report
        .complaints()
        .forEach(
            each -> complaints.addObject().put("where", each.where()).put("what", each.what()));
    ArrayNode proofs = node.putArray("proofs");
    report
        .proofs()
        .forEach(
            each -> proofs.addObject().put("count", each.count()).put("what", each.sentence()));
    return JsonText.print(node);
  }

  public static String of(Agreement agreement) {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/agreement/1");
    node.put("sites", agreement.sites());
    node.put("withoutStructure", agreement.without());
    ArrayNode rules = node.putArray("rules");
    for (String rule : agreement.rules()) {
      ObjectNode each = rules.addObject().put("rule", rule);
      each.put("speaks", agreement.spoke(rule));
      each.put("safer", agreement.count(rule, Standing.SAFER));
      each.put("equal", agreement.count(rule, Standing.EQUAL));
      each.put("notEnough", agreement.count(rule, Standing.NOT_ENOUGH));
      each.set("alone", alone(agreement, rule));
      ArrayNode places = each.putArray("places");
      agreement.of(rule).forEach(placed -> places.add(place(agreement, placed)));
    }
    return JsonText.print(node);
  }

  /** Where the rule may be relied on without the calculation. */
  private static ObjectNode alone(Agreement agreement, String rule) {
    ObjectNode node = JsonText.object();
    agreement
        .range(rule)
        .ifPresent(
            range -> {
              node.put("never", range.most().isEmpty());
              range.most().ifPresent(most -> most.forEach(node.putObject("upTo")::put));
              node.put("reason", range.reason());
            });
    node.put("sites", agreement.inside(rule));
    node.put("notEnough", agreement.inside(rule, Standing.NOT_ENOUGH));
    return node;
  }

  private static ObjectNode place(Agreement agreement, Agreement.Placed placed) {
    ObjectNode node = JsonText.object();
    for (int axis = 0; axis < placed.site().size(); axis++) {
      node.put(agreement.axes().get(axis).path(), placed.site().get(axis));
    }
    node.put("thumb", placed.trial().thumb());
    node.put("calculated", placed.trial().calculated());
    String standing = placed.trial().standing().name();
    node.put("standing", standing.toLowerCase(Locale.ROOT).replace('_', '-'));
    return node;
  }

  private static ObjectNode rule(RuleEntry rule) {
    ObjectNode node = JsonText.object();
    node.put("id", rule.id());
    node.put("phase", rule.note().phase().folder());
    rule.questions().stream().map(Question::id).forEach(node.putArray("questions")::add);
    node.put("finds", rule.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("outcome", rule.outcome());
    node.set("source", source(rule.note().source()));
    rule.reads().forEach(node.putArray("reads")::add);
    ArrayNode rows = node.putArray("rows");
    rule.figures().forEach(figure -> rows.add(row(figure)));
    ObjectNode words = node.putObject("words");
    for (Reader reader : Reader.values()) {
      words.put(reader.name().toLowerCase(Locale.ROOT), rule.words().getOrDefault(reader, ""));
    }
    rule.cases().forEach(node.putArray("cases")::add);
    node.put("file", "rules/" + rule.place() + ".drl");
    return node;
  }

  private static ObjectNode row(Figure figure) {
    ObjectNode node = JsonText.object();
    node.put("table", figure.table());
    node.put("id", figure.id());
    figure
        .measure()
        .ifPresent(
            measure -> {
              node.put("value", measure.amount());
              node.put("unit", unit(measure.unit()));
            });
    if (!figure.word().isEmpty()) {
      node.put("word", figure.word());
    }
    node.put("words", figure.words());
    node.set("source", source(figure.source()));
    node.put("status", figure.status());
    return node;
  }

  private static String unit(Unit unit) {
    return unit.imperialSymbol().isEmpty()
        ? unit.name().toLowerCase(Locale.ROOT)
        : unit.imperialSymbol();
  }

  private static ObjectNode source(Source source) {
    return JsonText.object().put("kind", source.kind().word()).put("citation", source.text());
  }
}
