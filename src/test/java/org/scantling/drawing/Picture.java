package org.scantling.drawing;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A drawing read back by the parser of the platform, which knows nothing of how it was written. */
record Picture(String name, Element root) {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  static Picture read(String name, String text) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return new Picture(
          name,
          factory
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(text)))
              .getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(name + " is no XML: " + broken.getMessage(), broken);
    }
  }

  /** A straight line on the sheet. */
  record Stroke(double fromX, double fromY, double toX, double toY) {
    double longPx() {
      return Math.hypot(toX - fromX, toY - fromY);
    }
  }

  /** A dimension: what it measures, what it says, and the line that it says it of. */
  record Dimension(String of, String words, double longPx) {}

  List<Element> elements(String tag) {
    NodeList found = root.getElementsByTagName(tag);
    return IntStream.range(0, found.getLength())
        .mapToObj(found::item)
        .map(Element.class::cast)
        .toList();
  }

  double pxPerInch() {
    return Double.parseDouble(root.getAttribute("data-px-per-inch"));
  }

  List<Dimension> dimensions() {
    return elements("g").stream()
        .filter(group -> group.getAttribute("class").equals("measure"))
        .map(Picture::dimension)
        .toList();
  }

  private static Dimension dimension(Element group) {
    List<Stroke> strokes = new ArrayList<>();
    NodeList paths = group.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      strokes.addAll(strokes((Element) paths.item(i)));
    }
    Stroke first = strokes.get(0);
    Stroke last = strokes.get(strokes.size() - 1);
    return new Dimension(
        group.getAttribute("data-of"),
        group.getElementsByTagName("text").item(0).getTextContent(),
        new Stroke(first.fromX(), first.fromY(), last.toX(), last.toY()).longPx());
  }

  /** All lines and edges, those of circles as polygons. */
  List<Stroke> strokes() {
    List<Stroke> strokes = new ArrayList<>();
    elements("path").forEach(path -> strokes.addAll(strokes(path)));
    for (Element circle : elements("circle")) {
      double x = number(circle, "cx");
      double y = number(circle, "cy");
      double r = number(circle, "r");
      for (int i = 0; i < 36; i++) {
        double from = 2 * Math.PI * i / 36;
        double to = 2 * Math.PI * (i + 1) / 36;
        strokes.add(
            new Stroke(
                x + r * Math.cos(from),
                y + r * Math.sin(from),
                x + r * Math.cos(to),
                y + r * Math.sin(to)));
      }
    }
    return strokes;
  }

  private static List<Stroke> strokes(Element path) {
    String d = path.getAttribute("d");
    Matcher numbers = NUMBER.matcher(d);
    List<double[]> points = new ArrayList<>();
    while (numbers.find()) {
      double x = Double.parseDouble(numbers.group());
      if (!numbers.find()) {
        throw new AssertionError("odd path: " + d);
      }
      points.add(new double[] {x, Double.parseDouble(numbers.group())});
    }
    if (d.endsWith("Z")) {
      points.add(points.get(0));
    }
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      double[] from = points.get(i);
      double[] to = points.get(i + 1);
      strokes.add(new Stroke(from[0], from[1], to[0], to[1]));
    }
    return strokes;
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  List<String> words() {
    return elements("text").stream().map(Element::getTextContent).toList();
  }

  String says() {
    return elements("desc").get(0).getTextContent();
  }
}
