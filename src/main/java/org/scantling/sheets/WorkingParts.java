package org.scantling.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.drawing.DiagramWords;
import org.scantling.print.Calculation;
import org.scantling.print.CalculationBeside;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/**
 * The working from the loads to the joints: before that of a beam its shear and moment, after that
 * of a member the next smaller size of it that a check stopped.
 */
final class WorkingParts {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private final SheetSource source;
  private final Calculation calculation;
  private final CalculationBeside beside;
  private final SheetParts parts;

  WorkingParts(
      SheetSource source, Calculation calculation, CalculationBeside beside, SheetParts parts) {
    this.source = source;
    this.calculation = calculation;
    this.beside = beside;
    this.parts = parts;
  }

  void add() {
    List<Calculation.Part> all = calculation.parts();
    for (int i = 0; i < all.size(); i++) {
      Calculation.Part part = all.get(i);
      if (first(all, i)) {
        diagrams(part.member());
      }
      parts.under(part.title());
      lines(part.lines());
      if (last(all, i)) {
        tried(part.member());
      }
    }
  }

  private static boolean first(List<Calculation.Part> all, int at) {
    String member = all.get(at).member();
    return all.subList(0, at).stream().noneMatch(each -> each.member().equals(member));
  }

  private static boolean last(List<Calculation.Part> all, int at) {
    String member = all.get(at).member();
    return all.subList(at + 1, all.size()).stream().noneMatch(each -> each.member().equals(member));
  }

  private void lines(List<Calculation.Line> lines) {
    parts.add(
        new Part.Working(
            lines.stream()
                .map(
                    each -> new Part.Line(each.what(), each.formula(), each.clause(), !each.seen()))
                .toList()));
  }

  private void diagrams(String member) {
    Voice voice = source.voice(Reader.ENGINEER);
    for (CalculationBeside.Drawn each : beside.diagrams()) {
      if (each.diagram().role().equals(member)) {
        DiagramWords words = new DiagramWords(member, each.check(), voice::say);
        parts.under(
            SAYINGS.say("engineer.diagram." + each.diagram().kind().word(), "member", member));
        parts.add(new Part.Figure(room -> source.drawings().diagram(each.diagram(), words, room)));
      }
    }
  }

  private void tried(String member) {
    for (CalculationBeside.Tried each : beside.tried()) {
      if (each.member().equals(member)) {
        parts.under(SAYINGS.say("engineer.tried", "member", member, "size", each.size()));
        parts.prose(note(each));
        lines(each.lines());
      }
    }
  }

  private static String note(CalculationBeside.Tried tried) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("check", tried.check().name());
    blanks.put("combination", tried.check().combination());
    blanks.put("demand", tried.check().demand());
    blanks.put("capacity", tried.check().capacity());
    blanks.put("used", tried.check().used());
    if (!tried.asStopped()) {
      blanks.put("since", "");
    }
    return SAYINGS.say("engineer.tried.note", blanks);
  }
}
