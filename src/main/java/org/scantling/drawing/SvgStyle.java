package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The look of a sheet: every colour is a token with a value for light and one for dark. */
final class SvgStyle {
  static final String TEXT = text();

  private SvgStyle() {}

  private static String text() {
    List<String> lines = new ArrayList<>();
    lines.add(".scantling{color-scheme:light dark;" + tokens(true) + "}");
    lines.add("@media (prefers-color-scheme:dark){.scantling{" + tokens(false) + "}}");
    lines.add("@media print{.scantling{" + tokens(true) + "}}");
    lines.add(".scantling .sheet{fill:var(--paper)}");
    lines.add(".scantling path,.scantling circle{fill:none;stroke-linejoin:round}");
    Stream.of(Tone.values()).flatMap(SvgStyle::area).forEach(lines::add);
    Stream.of(LineClass.values()).map(SvgStyle::edge).forEach(lines::add);
    lines.add(".scantling text{font-family:\"DejaVu Sans\",Verdana,sans-serif;fill:var(--ink)}");
    lines.add(lettering());
    return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
  }

  /** One rule for each kind of lettering. */
  private static String lettering() {
    List<String> kinds = new ArrayList<>();
    for (Lettering each : Lettering.values()) {
      String weight = each.bold() ? ";font-weight:700" : "";
      String hue = each.hue() == Hue.INK ? "" : ";fill:" + token(each.hue());
      kinds.add(
          ".scantling ." + each.word() + "{font-size:" + each.sizePx() + "px" + weight + hue + "}");
    }
    return String.join("", kinds);
  }

  private static String tokens(boolean light) {
    return Stream.of(Hue.values())
        .map(each -> "--" + each.word() + ":" + (light ? each.light() : each.dark()))
        .collect(Collectors.joining(";"));
  }

  private static String token(Hue hue) {
    return "var(--" + hue.word() + ")";
  }

  private static Stream<String> area(Tone tone) {
    return tone
        .hue()
        .map(hue -> ".scantling ." + tone.word() + "{fill:" + token(hue) + "}")
        .stream();
  }

  private static String edge(LineClass line) {
    String rule = ".scantling ." + line.word();
    if (line.widthPx() == 0) {
      return rule + "{stroke:none}";
    }
    String stroke =
        rule
            + "{stroke:"
            + token(line.hue())
            + ";stroke-width:"
            + Double.toString(line.widthPx()).replace(".0", "")
            + "}";
    String dashes = line.dashesPx().stream().map(Object::toString).collect(Collectors.joining(" "));
    return dashes.isEmpty() ? stroke : stroke + rule + "{stroke-dasharray:" + dashes + "}";
  }
}
