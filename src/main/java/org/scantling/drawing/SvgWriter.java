package org.scantling.drawing;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a sheet as a file of scalable vector graphics that works by itself. */
public final class SvgWriter {
  private static final double LEAST_RATIO = 0.88;

  private final StringBuilder out = new StringBuilder();
  private final Sheet sheet;
  private final PaperBox edges;
  private final String prefix;
  private boolean narrowest;

  /**
   * @param prefix of the names of its parts, so that a page may hold several
   */
  private SvgWriter(Sheet sheet, PaperBox edges, String prefix) {
    this.sheet = sheet;
    this.edges = edges;
    this.prefix = prefix;
  }

  static String write(Sheet sheet) {
    SvgWriter writer = new SvgWriter(sheet, sheet.edges(), "");
    writer.open();
    writer.out.append("<style>\n").append(SvgStyle.TEXT).append("</style>\n");
    writer.background();
    sheet.inks().forEach(writer::ink);
    return writer.closed();
  }

  /**
   * A drawing without its heading and notes, as a part of a page that has {@link #style}.
   *
   * @param prefix of its names, which no other drawing of the page has
   */
  public static String inPage(Sheet sheet, String prefix) {
    SvgWriter writer = new SvgWriter(sheet, sheet.bareEdges(), prefix);
    writer.narrowest = true;
    writer.open();
    sheet.bare().forEach(writer::ink);
    return writer.closed();
  }

  /** The rules that drawings in a page are shown by. */
  public static String style() {
    return SvgStyle.TEXT;
  }

  private String closed() {
    return out.append("</svg>\n").toString();
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
        .append(narrowest ? attribute("style", leastWidth(widePx)) : "")
        .append(attribute("role", "img"))
        .append(attribute("aria-labelledby", title + " " + says))
        .append(
            attribute("data-px-per-inch", String.format(Locale.ROOT, "%.5f", sheet.scalePxPerIn())))
        .append(">\n");
    element("title", title, sheet.title());
    element("desc", says, sheet.says());
  }

  /** It may shrink to fit, but no further than its writing can be read. */
  private static String leastWidth(double widePx) {
    return "min-width:" + number(LEAST_RATIO * widePx) + "px";
  }

  private void background() {
    out.append("<rect class=\"sheet\"")
        .append(attribute("width", number(edges.rightPx() - edges.leftPx())))
        .append(attribute("height", number(edges.bottomPx() - edges.topPx())))
        .append("/>\n");
  }

  private String id(String part) {
    return prefix + sheet.name() + "-" + part;
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
