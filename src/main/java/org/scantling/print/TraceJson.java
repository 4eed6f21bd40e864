package org.scantling.print;

import java.util.List;
import java.util.stream.Collectors;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.tables.SymbolRow;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The steps of a calculation and their symbols, with the reader's words for text. */
final class TraceJson {
  private final CalculationWords words;

  TraceJson(Words words, Reader reader) {
    this.words = CalculationWords.of(words.voice(reader, UnitSystem.IMPERIAL));
  }

  /** Each step of working with what went into it, and as a formula. */
  ArrayNode steps(List<CalculationStep> trace) {
    ArrayNode nodes = JsonNodeFactory.instance.arrayNode();
    for (CalculationStep step : trace) {
      ObjectNode node = nodes.addObject();
      node.put("id", step.id());
      node.put("part", words.part(step));
      node.put("what", words.worked(step));
      measure(node, step.result());
      ArrayNode inputs = node.putArray("inputs");
      step.evidence().seen().stream()
          .filter(each -> !marker(each))
          .forEach(each -> input(inputs.addObject(), each));
      node.put("formula", words.formula(step));
      node.set("source", ReasonJson.source(step.source()));
    }
    return nodes;
  }

  /**
   * What the symbols of those steps mean: where a symbol has a scope, in steps whose ids begin so,
   * else in all others.
   */
  ArrayNode symbols(List<CalculationStep> trace) {
    ArrayNode nodes = JsonNodeFactory.instance.arrayNode();
    for (SymbolRow symbol : words.symbols(trace)) {
      ObjectNode node = nodes.addObject();
      node.put("symbol", symbol.symbol());
      node.put("part", symbol.part());
      symbol.scope().forEach(node.putArray("scope")::add);
      node.put("means", symbol.means());
      node.put("unit", unit(symbol));
      node.set("source", ReasonJson.source(symbol.source()));
    }
    return nodes;
  }

  /** As the steps have it. */
  private static String unit(SymbolRow symbol) {
    return symbol.units().stream()
        .map(ReasonJson::word)
        .distinct()
        .collect(Collectors.joining(" or "));
  }

  /** An empty word only turns a part of a formula on. */
  private static boolean marker(Evidence.Seen seen) {
    return seen instanceof Evidence.Seen.Word word && word.text().isEmpty();
  }

  private static void input(ObjectNode node, Evidence.Seen seen) {
    node.put("name", seen.name());
    if (seen instanceof Evidence.Seen.Amount amount) {
      measure(node, amount.measure());
    } else {
      node.put("value", ((Evidence.Seen.Word) seen).text());
    }
  }

  private static void measure(ObjectNode node, Measure measure) {
    node.put("value", JsonText.rounded(measure.amount()));
    node.put("unit", ReasonJson.word(measure.unit()));
  }
}
