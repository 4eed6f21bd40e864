package org.scantling.sheets;

import java.util.List;
import java.util.Locale;
import org.scantling.drawing.Room;
import org.scantling.drawing.Sheet;
import org.scantling.drawing.SvgWriter;
import org.scantling.drawing.Xml;
import org.scantling.print.Block;
import org.scantling.sayings.Sayings;

/** Writes a sheet as a page of HTML that works by itself: no script, nothing from elsewhere. */
public final class HtmlWriter {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private final StringBuilder out = new StringBuilder();
  private int figures;

  private HtmlWriter() {}

  public static String write(SheetDocument sheet) {
    HtmlWriter writer = new HtmlWriter();
    writer.head(sheet);
    writer.element("h1", "", sheet.title());
    writer.element("p", "meta", sheet.kind());
    sheet.parts().forEach(writer::part);
    writer.element("footer", "", sheet.foot());
    writer.out.append("</main></body></html>\n");
    return writer.out.toString();
  }

  private void head(SheetDocument sheet) {
    String title = SAYINGS.say("page", "title", sheet.title(), "kind", sheet.kind());
    out.append("<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n")
        .append("<meta http-equiv=\"Content-Security-Policy\"")
        .append(" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n");
    element("title", "", title);
    out.append("<style>\n")
        .append(StyleSheet.TEXT)
        .append(StyleSheet.page(title, sheet.paper()))
        .append(SvgWriter.style())
        .append("</style></head>\n<body><main>\n");
  }

  private void part(Part part) {
    if (part instanceof Part.Heading heading) {
      element("h" + heading.level(), "", heading.text());
    } else if (part instanceof Part.Prose prose) {
      element("p", manner(prose.manner()), prose.text());
    } else if (part instanceof Part.Bullets list) {
      bullets(list);
    } else if (part instanceof Part.Steps steps) {
      steps.items().forEach(this::step);
    } else if (part instanceof Part.Table table) {
      table(table);
    } else if (part instanceof Part.Facts facts) {
      terms("facts", facts.facts());
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
    } else if (part instanceof Part.Working working) {
      working.lines().forEach(this::line);
    } else if (part instanceof Part.Fields fields) {
      terms("fields", fields.fields());
    } else if (part instanceof Part.Seal seal) {
      element("div", "seal", seal.words());
    } else if (part instanceof Part.Links links) {
      links(links);
    } else if (part instanceof Part.NewPage) {
      out.append("<div class=\"new-page\"></div>\n");
    }
  }

  private static String manner(Part.Manner manner) {
    return switch (manner) {
      case ANSWER -> "answer";
      case SMALL -> "small";
      case PLAIN -> "";
    };
  }

  /** The one way by which text comes into the page. */
  private HtmlWriter text(String text) {
    out.append(Xml.escaped(Joined.of(text)));
    return this;
  }

  private void element(String name, String look, String text) {
    open(name, look).text(text).close(name);
  }

  private HtmlWriter open(String name, String look) {
    out.append('<').append(name);
    if (!look.isEmpty()) {
      out.append(" class=\"").append(look).append('"');
    }
    out.append('>');
    return this;
  }

  private void close(String name) {
    out.append("</").append(name).append(">\n");
  }

  private void bullets(Part.Bullets list) {
    open("ul", list.care() ? "care" : "");
    for (Block.Item item : list.items()) {
      open("li", "");
      if (!item.lead().isEmpty()) {
        open("b", "").text(item.lead() + ":").close("b");
      }
      text(item.text()).close("li");
    }
    close("ul");
  }

  private void step(Block.Item item) {
    boolean number = !item.lead().isEmpty() && Character.isDigit(item.lead().charAt(0));
    open("div", number ? "step" : "step remark");
    open("b", "").text(item.lead()).close("b");
    element("p", "", item.text());
    close("div");
  }

  private void table(Part.Table table) {
    out.append("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"");
    text(table.name());
    out.append("\"><table><thead><tr>");
    table.head().forEach(each -> head(each, "col"));
    out.append("</tr></thead>\n<tbody>");
    for (int i = 0; i < table.rows().size(); i++) {
      open("tr", i == table.marked() ? "marked" : "");
      List<String> row = table.rows().get(i);
      head(row.get(0), "row");
      row.stream().skip(1).forEach(each -> element("td", "", each));
      close("tr");
    }
    out.append("</tbody></table></div>\n");
  }

  private void head(String text, String scope) {
    if (text.isEmpty()) {
      out.append("<td></td>");
      return;
    }
    out.append("<th scope=\"").append(scope).append("\">");
    text(text).close("th");
  }

  private void terms(String look, List<Block.Item> items) {
    open("dl", look);
    for (Block.Item item : items) {
      open("div", "");
      element("dt", "", item.lead());
      element("dd", "", item.text());
      close("div");
    }
    close("dl");
  }

  private void figure(Part.Figure figure) {
    Sheet wide = figure.drawn().apply(Room.WIDE);
    Sheet narrow = figure.drawn().apply(Room.PHONE);
    if (wide == narrow) {
      figure(wide, "", "f");
    } else {
      figure(wide, "for-wide", "w");
      figure(narrow, "for-narrow", "n");
    }
  }

  private void figure(Sheet sheet, String look, String prefix) {
    figures++;
    open("figure", look);
    out.append("<div class=\"drawn\" tabindex=\"0\" role=\"group\" aria-label=\"");
    text(sheet.title());
    out.append("\">").append(SvgWriter.inPage(sheet, prefix + figures + "-")).append("</div>");
    if (!sheet.notes().isEmpty()) {
      element("figcaption", "", String.join(" ", sheet.notes()));
    }
    close("figure");
  }

  private void change(Part.Change change) {
    open("section", change.picture().isPresent() ? "change pictured" : "change");
    change.picture().ifPresent(this::figure);
    open("div", "");
    element("h3", "", change.heading());
    change.sentences().forEach(each -> element("p", "", each));
    close("div");
    close("section");
  }

  private void bar(Part.Bar bar) {
    double percent = 100 * Math.min(1, bar.ratio());
    open("div", "bar");
    open("span", "named").text(bar.name()).close("span");
    out.append("<span class=\"track\"><span style=\"width:")
        .append(String.format(Locale.ROOT, "%.1f", percent))
        .append("%\"></span></span>");
    open("span", "used").text(bar.used()).close("span");
    open("span", "more").text(bar.more()).close("span");
    close("div");
  }

  private void line(Part.Line line) {
    open("div", line.unseen() ? "line unseen" : "line");
    element("p", "", line.what());
    element("p", "formula", line.formula());
    element("p", "clause", line.clause());
    close("div");
  }

  private void links(Part.Links links) {
    open("ul", "links");
    for (Part.Link link : links.links()) {
      out.append("<li><a href=\"");
      text(link.href());
      out.append("\">");
      text(link.name()).close("a");
      text(link.says()).close("li");
    }
    close("ul");
  }
}
