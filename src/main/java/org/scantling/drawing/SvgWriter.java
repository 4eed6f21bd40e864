package org.scantling.drawing;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a sheet as a file of scalable vector graphics that works by itself. */
final class SvgWriter {
  private final StringBuilder out = new StringBuilder();
  private final Sheet sheet;
  private final PaperBox edges;

  private SvgWriter(Sheet sheet) {
    this.sheet = sheet;
    this.edges = sheet.edges();
  }

  static String write(Sheet sheet) {
    SvgWriter writer = new SvgWriter(sheet);
    writer.open();
    sheet.inks().forEach(writer::ink);
    writer.out.append("</svg>\n");
    return writer.out.toString();
  }

  private void open() {
    String title = id("title");
    String says = id("desc");
    double widePx = edges.rightPx() - edges.leftPx();
    double highPx = edges.bottomPx() - edges.topPx();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"scantling\"")
        .append(attribute("viewBox", "0 0 " + number(widePx) + " " + number(highPx)))
        .append(attribute("width", number(widePx)))
        .append(attribute("height", number(highPx)))
        .append(attribute("role", "img"))
        .append(attribute("aria-labelledby", title + " " + says))
        .append(
            attribute("data-px-per-inch", String.format(Locale.ROOT, "%.5f", sheet.scalePxPerIn())))
        .append(">\n");
    element("title", title, sheet.title());
    element("desc", says, sheet.says());
    out.append("<style>\n").append(SvgStyle.TEXT).append("</style>\n");
    out.append("<rect class=\"sheet\"")
        .append(attribute("width", number(widePx)))
        .append(attribute("height", number(highPx)))
        .append("/>\n");
  }

  private String id(String part) {
    return sheet.name() + "-" + part;
  }

  private void element(String name, String id, String text) {
    out.append('<').append(name).append(attribute("id", id)).append('>');
    out.append(Xml.escaped(text)).append("</").append(name).append(">\n");
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Path path) {
      path(path);
    } else if (ink instanceof Ink.Disc disc) {
      disc(disc);
    } else if (ink instanceof Ink.Letters letters) {
      letters(letters);
    } else if (ink instanceof Ink.Measure measure) {
      out.append("<g class=\"measure\"").append(attribute("data-of", measure.of())).append(">\n");
      measure.lines().forEach(this::path);
      letters(measure.letters());
      out.append("</g>\n");
    }
  }

  private void path(Ink.Path path) {
    String points =
        path.points().stream().map(this::point).collect(Collectors.joining(" L", "M", ""));
    out.append("<path").append(attribute("class", classes(path.tone(), path.line())));
    if (!path.mark().isEmpty()) {
      out.append(attribute("data-mark", path.mark()));
    }
    out.append(attribute("d", path.closed() ? points + " Z" : points)).append("/>\n");
  }

  private void disc(Ink.Disc disc) {
    out.append("<circle")
        .append(attribute("class", classes(disc.tone(), disc.line())))
        .append(attribute("cx", x(disc.middle())))
        .append(attribute("cy", y(disc.middle())))
        .append(attribute("r", number(disc.radiusPx())))
        .append("/>\n");
  }

  private void letters(Ink.Letters letters) {
    PaperPoint at = letters.at();
    out.append("<text")
        .append(attribute("class", letters.lettering().word()))
        .append(attribute("x", x(at)))
        .append(attribute("y", y(at)))
        .append(attribute("text-anchor", letters.anchor().word()));
    if (letters.turned()) {
      out.append(attribute("transform", "rotate(-90 " + x(at) + " " + y(at) + ")"));
    }
    out.append('>').append(Xml.escaped(letters.words())).append("</text>\n");
  }

  private static String classes(Tone tone, LineClass line) {
    return tone.word() + " " + line.word();
  }

  private String point(PaperPoint point) {
    return x(point) + " " + y(point);
  }

  private String x(PaperPoint point) {
    return number(point.rightPx() - edges.leftPx());
  }

  private String y(PaperPoint point) {
    return number(point.downPx() - edges.topPx());
  }

  private static String attribute(String name, String value) {
    return " " + name + "=\"" + Xml.escaped(value) + "\"";
  }

  private static String number(double px) {
    String text = String.format(Locale.ROOT, "%.2f", px);
    return text.equals("-0.00") ? "0.00" : text;
  }
}
