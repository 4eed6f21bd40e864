package org.scantling.pdf;

import java.awt.Color;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.scantling.drawing.Hue;
import org.scantling.drawing.Room;
import org.scantling.drawing.Sheet;
import org.scantling.print.Block;
import org.scantling.sheets.Part;
import org.scantling.sheets.SheetDocument;

/** Lays the parts of a sheet on paper. */
final class PdfParts {
  private static final double INDENT_PT = 14;
  private static final double CLAUSE_PT = 16;
  private static final double STEP_PT = 62;
  private static final double KEEP_PT = 64;
  private static final double HEAD_PT = 40;
  private static final double PICTURE_PT = 150;
  private static final double BAR_PT = 8;
  private static final double FIELD_PT = 22;
  private static final double SEAL_PT = 150;

  private final Flow flow;
  private final PDStructureElement top;

  PdfParts(Flow flow) {
    this.flow = flow;
    this.top = flow.tags().top();
  }

  void write(SheetDocument sheet) {
    text("H1", Type.TITLE, sheet.title());
    text("P", Type.SMALL, sheet.kind() + ". " + sheet.foot());
    flow.space(10);
    for (int i = 0; i < sheet.parts().size(); i++) {
      Part part = sheet.parts().get(i);
      boolean over = i + 1 < sheet.parts().size() && part instanceof Part.Heading;
      if (over && sheet.parts().get(i + 1) instanceof Part.Figure figure) {
        flow.need(HEAD_PT + highPt(figure));
      }
      part(part);
    }
  }

  private PDStructureElement under(String type) {
    return Tags.under(top, type);
  }

  private void text(String tag, Type type, String text) {
    flow.text(under(tag), type, Flow.leftPt(), flow.widePt(), text);
  }

  private void part(Part part) {
    if (part instanceof Part.Heading heading) {
      heading(heading);
    } else if (part instanceof Part.Prose prose) {
      prose(prose);
    } else if (part instanceof Part.Bullets list) {
      bullets(list);
    } else if (part instanceof Part.Steps steps) {
      steps(steps.items());
    } else if (part instanceof Part.Table table) {
      new TableLayout(flow, table).draw(top);
    } else if (part instanceof Part.Facts facts) {
      facts(facts.facts());
    } else if (part instanceof Part.Figure figure) {
      figure(figure);
    } else if (part instanceof Part.Change change) {
      change(change);
    } else {
      paper(part);
    }
  }

  private void paper(Part part) {
    if (part instanceof Part.Bars bars) {
      bars.bars().forEach(this::bar);
      flow.space(6);
    } else if (part instanceof Part.Working working) {
      working.lines().forEach(this::line);
    } else if (part instanceof Part.Fields fields) {
      fields.fields().forEach(this::field);
      flow.space(10);
    } else if (part instanceof Part.Seal seal) {
      seal(seal);
    } else if (part instanceof Part.FullSize fullSize) {
      new FullSizePages(flow, fullSize).draw(top);
    } else if (part instanceof Part.NewPage) {
      flow.newPage();
    } else {
      throw new IllegalArgumentException("no paper for " + part.getClass().getSimpleName());
    }
  }

  private void heading(Part.Heading heading) {
    boolean section = heading.level() == 2;
    Type type = section ? Type.SECTION : Type.UNDER;
    flow.space(section ? 18 : 10);
    flow.need(type.leadPt() + KEEP_PT);
    text("H" + heading.level(), type, heading.text());
    flow.space(section ? 4 : 2);
  }

  private void prose(Part.Prose prose) {
    Type type =
        switch (prose.manner()) {
          case ANSWER -> Type.ANSWER;
          case SMALL -> Type.SMALL;
          case PLAIN -> Type.TEXT;
        };
    text("P", type, prose.text());
    flow.space(6);
  }

  private void bullets(Part.Bullets list) {
    PDStructureElement element = under("L");
    for (Block.Item item : list.items()) {
      PDStructureElement entry = Tags.under(element, "LI");
      flow.need(2 * Type.TEXT.leadPt());
      flow.words(
          Tags.under(entry, "Lbl"),
          Type.TEXT,
          Flow.leftPt() + 2,
          flow.downPt() + Type.TEXT.sizePt(),
          "\u2022");
      PDStructureElement body = Tags.under(entry, "LBody");
      String lead = item.lead().isEmpty() ? "" : item.lead() + ": ";
      flow.text(
          body,
          Type.TEXT,
          Flow.leftPt() + INDENT_PT,
          flow.widePt() - INDENT_PT,
          lead + item.text());
      flow.space(2);
    }
    flow.space(6);
  }

  private void steps(List<Block.Item> items) {
    PDStructureElement element = under("L");
    for (Block.Item item : items) {
      PDStructureElement entry = Tags.under(element, "LI");
      double room = flow.widePt() - STEP_PT;
      flow.need(flow.highPt(Type.TEXT, room, item.text()) + 6);
      double downPt = flow.downPt();
      List<String> lead = flow.fonts().lines(item.lead(), Type.LEAD, STEP_PT - 6);
      PDStructureElement label = Tags.under(entry, "Lbl");
      for (int i = 0; i < lead.size(); i++) {
        double basePt = downPt + 3 + Type.TEXT.sizePt() + i * Type.SMALL.leadPt();
        flow.words(label, Type.LEAD, Flow.leftPt(), basePt, lead.get(i));
      }
      flow.past(3);
      flow.text(Tags.under(entry, "LBody"), Type.TEXT, Flow.leftPt() + STEP_PT, room, item.text());
      flow.past(3);
      flow.rule(Flow.leftPt(), flow.widePt(), flow.downPt());
    }
    flow.space(6);
  }

  private void facts(List<Block.Item> facts) {
    double wide = flow.widePt() / facts.size();
    flow.need(40);
    double downPt = flow.downPt();
    PDStructureElement element = under("L");
    double most = 0;
    for (int i = 0; i < facts.size(); i++) {
      PDStructureElement entry = Tags.under(element, "LI");
      double left = Flow.leftPt() + i * wide;
      double down = downPt;
      PDStructureElement name = Tags.under(entry, "Lbl");
      for (String line : flow.fonts().lines(facts.get(i).lead(), Type.SMALL, wide - 8)) {
        flow.words(name, Type.SMALL, left, down + Type.SMALL.sizePt(), line);
        down += Type.SMALL.leadPt();
      }
      PDStructureElement value = Tags.under(entry, "LBody");
      for (String line : flow.fonts().lines(facts.get(i).text(), Type.BIG, wide - 8)) {
        flow.words(value, Type.BIG, left, down + Type.BIG.sizePt(), line);
        down += Type.BIG.leadPt();
      }
      most = Math.max(most, down - downPt);
    }
    flow.past(most);
    flow.space(12);
  }

  private double notesPt(List<String> notes) {
    return notes.isEmpty()
        ? 0
        : flow.highPt(Type.SMALL, flow.widePt(), String.join(" ", notes)) + 6;
  }

  /** A drawing with its notes. */
  private double highPt(Part.Figure figure) {
    Sheet sheet = figure.drawn().apply(Room.PAPER);
    double notesPt = notesPt(sheet.notes());
    return drawn(sheet, notesPt).highPt() + notesPt + 8;
  }

  private DrawnSheet drawn(Sheet sheet, double notesPt) {
    return new DrawnSheet(
        sheet, flow.fonts(), flow.widePt(), flow.highPt() - notesPt - 20 - HEAD_PT);
  }

  private void figure(Part.Figure figure) {
    Sheet sheet = figure.drawn().apply(Room.PAPER);
    List<String> notes = sheet.notes();
    double notesPt = notesPt(notes);
    DrawnSheet drawn = drawn(sheet, notesPt);
    flow.space(6);
    flow.need(drawn.highPt() + notesPt + 8);
    place(sheet, drawn, Flow.leftPt(), flow.downPt());
    flow.past(drawn.highPt() + 6);
    if (!notes.isEmpty()) {
      text("P", Type.SMALL, String.join(" ", notes));
    }
    flow.space(8);
  }

  private void place(Sheet sheet, DrawnSheet drawn, double leftPt, double downPt) {
    PDStructureElement element = under("Figure");
    element.setAlternateDescription(sheet.title() + ". " + sheet.says());
    double topPt = flow.upPt(downPt);
    Tags.box(
        element,
        new PDRectangle(
            (float) leftPt,
            (float) (topPt - drawn.highPt()),
            (float) drawn.widePt(),
            (float) drawn.highPt()));
    flow.marked(element, out -> drawn.draw(out, leftPt, topPt));
  }

  private void change(Part.Change change) {
    double indent = change.picture().isPresent() ? PICTURE_PT : 0;
    double room = flow.widePt() - indent;
    double textPt = Type.UNDER.leadPt() + 4;
    for (String each : change.sentences()) {
      textPt += flow.highPt(Type.TEXT, room, each) + 3;
    }
    double picturePt = 0;
    if (change.picture().isPresent()) {
      Sheet sheet = change.picture().get().drawn().apply(Room.PAPER);
      DrawnSheet drawn = new DrawnSheet(sheet, flow.fonts(), PICTURE_PT - 10, KEEP_PT * 2);
      picturePt = drawn.highPt();
      flow.need(Math.max(picturePt, textPt) + 10);
      place(sheet, drawn, Flow.leftPt(), flow.downPt() + 4);
    } else {
      flow.need(textPt + 10);
    }
    double fromPt = flow.downPt();
    flow.text(under("H3"), Type.UNDER, Flow.leftPt() + indent, room, change.heading());
    flow.space(2);
    for (String each : change.sentences()) {
      flow.text(under("P"), Type.TEXT, Flow.leftPt() + indent, room, each);
      flow.space(3);
    }
    flow.past(Math.max(0, fromPt + picturePt + 8 - flow.downPt()) + 4);
    flow.rule(Flow.leftPt(), flow.widePt(), flow.downPt());
    flow.space(8);
  }

  private void bar(Part.Bar bar) {
    flow.need(2 * Type.CELL.leadPt() + BAR_PT + 14);
    PDStructureElement words = under("P");
    double usedPt = flow.fonts().widePt(bar.used(), Type.HEAD);
    flow.words(
        words,
        Type.HEAD,
        Flow.leftPt() + flow.widePt() - usedPt,
        flow.downPt() + Type.HEAD.sizePt(),
        bar.used());
    flow.text(words, Type.HEAD, Flow.leftPt(), flow.widePt() - usedPt - 10, bar.name());
    double down = flow.downPt() + 2;
    flow.artifact(
        out -> {
          out.setNonStrokingColor(Flow.color(Hue.GROWN));
          float used = (float) (flow.widePt() * Math.min(1, bar.ratio()));
          float foot = (float) (flow.upPt(down) - BAR_PT);
          out.addRect((float) Flow.leftPt(), foot, used, (float) BAR_PT);
          out.fill();
          out.setStrokingColor(Flow.color(Hue.MUTED));
          out.setLineWidth(0.5f);
          out.addRect((float) Flow.leftPt(), foot, (float) flow.widePt(), (float) BAR_PT);
          out.stroke();
        });
    flow.past(BAR_PT + 5);
    flow.text(words, Type.SMALL, Flow.leftPt(), flow.widePt(), bar.more());
    flow.past(6);
  }

  /** What it is and where it comes from on one line, where both have room there. */
  private void line(Part.Line line) {
    double room = flow.widePt() - INDENT_PT;
    double clausePt =
        flow.fonts().widePt(flow.fonts().settable(line.clause(), Face.SANS), Type.SMALL);
    double leadPt =
        flow.fonts().widePt(flow.fonts().settable(line.what(), Face.SANS_BOLD), Type.HEAD);
    boolean beside = leadPt + clausePt + CLAUSE_PT < flow.widePt();
    flow.need(
        flow.highPt(Type.HEAD, flow.widePt(), line.what())
            + flow.highPt(Type.CELL, room, line.formula())
            + (beside ? 0 : flow.highPt(Type.SMALL, room, line.clause()))
            + 4);
    PDStructureElement element = under("P");
    flow.past(1.5);
    double basePt = flow.downPt() + Type.HEAD.sizePt();
    flow.text(element, Type.HEAD, Flow.leftPt(), flow.widePt(), line.what());
    flow.text(element, Type.CELL, Flow.leftPt() + INDENT_PT, room, line.formula());
    if (beside) {
      clause(element, line.clause(), clausePt, basePt);
    } else {
      flow.text(element, Type.SMALL, Flow.leftPt() + INDENT_PT, room, line.clause());
    }
    flow.past(1.5);
  }

  private void clause(PDStructureElement element, String clause, double clausePt, double basePt) {
    if (!clause.isEmpty()) {
      String words = flow.fonts().lines(clause, Type.SMALL, flow.widePt()).get(0);
      double leftPt = Flow.leftPt() + flow.widePt() - clausePt;
      flow.words(element, Type.SMALL, leftPt, basePt, words);
    }
  }

  private void field(Block.Item field) {
    flow.need(FIELD_PT);
    double base = flow.downPt() + FIELD_PT - 6;
    PDStructureElement element = under("P");
    flow.words(element, Type.SMALL, Flow.leftPt(), base, field.lead());
    double left = Flow.leftPt() + 90;
    if (!field.text().isEmpty()) {
      String fits = flow.fonts().lines(field.text(), Type.TEXT, flow.widePt() - 90).get(0);
      flow.words(element, Type.TEXT, left, base, fits);
    }
    flow.past(FIELD_PT);
    flow.rule(left, flow.widePt() - 90, flow.downPt() - 2);
  }

  private void seal(Part.Seal seal) {
    flow.need(SEAL_PT + 10);
    double top = flow.downPt();
    flow.artifact(
        out -> {
          out.setStrokingColor(Color.DARK_GRAY);
          out.setLineWidth(0.7f);
          out.addRect(
              (float) Flow.leftPt(),
              (float) (flow.upPt(top) - SEAL_PT),
              (float) (flow.widePt() / 2),
              (float) SEAL_PT);
          out.stroke();
        });
    flow.words(
        under("P"),
        Type.SMALL,
        Flow.leftPt() + 8,
        top + 14,
        flow.fonts().lines(seal.words(), Type.SMALL, flow.widePt() / 2 - 16).get(0));
    flow.past(SEAL_PT + 10);
  }
}
