package org.scantling.print;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.SourceKind;
import org.scantling.tables.SymbolRow;
import org.scantling.words.CalculationWords;
import org.scantling.words.Voice;

/**
 * What every symbol of some steps of working means, each once. A letter that means one thing in one
 * part of them and another thing in another is told with the part.
 */
final class SymbolList {
  private final Voice voice;
  private final List<SymbolRow> symbols;
  private final Map<String, Long> meanings;

  SymbolList(List<CalculationStep> steps, Voice voice) {
    this.voice = voice;
    this.symbols = CalculationWords.of(voice).symbols(steps);
    this.meanings =
        symbols.stream().collect(Collectors.groupingBy(SymbolRow::symbol, Collectors.counting()));
  }

  List<Block.Item> items() {
    return symbols.stream().map(each -> new Block.Item(lead(each), text(each))).toList();
  }

  private String lead(SymbolRow symbol) {
    String unit = CalculationWords.of(voice).unit(symbol);
    boolean apart = meanings.getOrDefault(symbol.symbol(), 0L) > 1 && !symbol.everywhere();
    return symbol.symbol()
        + (unit.isEmpty() ? "" : ", " + unit)
        + (apart ? " (" + symbol.part() + ")" : "");
  }

  private String text(SymbolRow symbol) {
    boolean ours = symbol.source().kind() == SourceKind.CALCULATION;
    return symbol.means() + (ours ? "" : " [" + voice.source(symbol.source()) + "]");
  }
}
